import type { Allergen } from "../../catalogue/ingredient";
import type { WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import { allergensSaid } from "./allergensSaid";
import type { SaidCaution } from "./cautionsSaid";
import { allergenCalled } from "./allergensListed";
import { saysByLetters } from "./saysByLetters";
import { saysInList } from "./saysInList";
import { saysAnswer } from "../answers/saysAnswer";
import { isAllergenList, isOneWord, isPutUp, isTelling } from "./allergenList";
import type { AuditContext } from "../context";
import { listsThemAll } from "./listsThemAll";
import { setsOffInLines } from "./setsOffInLines";
import { marksThemAll } from "./marksThemAll";
import { isBlank, looksNumeric, textAt } from "../recipes/cells";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { massIn, unitFromHeader } from "../recipes/amounts/unit";

interface Said {
  readonly sheet: WorkbookSheet;
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

function someText(sheets: readonly WorkbookSheet[], test: (said: Said) => boolean): boolean {
  return sheets.some((sheet) =>
    [...sheetTexts(sheet).columnsByRow].some(([row, columns]) =>
      columns.some((column) => test({ sheet, row, column, text: textAt(sheet, row, column) })),
    ),
  );
}

const isName = (blocks: readonly RecipeBlock[], { sheet, row, column }: Said): boolean =>
  blocks.some(
    (block) =>
      block.sheet === sheet &&
      block.names.some((name) => name.row === row && name.column === column),
  );

/** A longer text beside a number is a sentence, not its label. */
const LONGEST_LABEL = 40;

/** A label's number stands at most this far beside it. */
const NUMBER_REACH = 6;

/** Whether the first thing right of a text is a number. */
function hasNumberRight({ sheet, row, column }: Said): boolean {
  const columns = Array.from({ length: NUMBER_REACH }, (_, at) => column + 1 + at);
  const first = columns.find((at) => !isBlank(sheet, row, at));
  return first !== undefined && looksNumeric(sheet, row, first);
}

/** "Honey, no under-ones (12 months).": four words and a full stop that shortens none. */
const SENTENCE = /^(?:\S+\s+){3,}.*?(?:\p{L}{5}|[\d)])[.!]$/u;

/** A sentence is none, nor is what a semicolon parts. */
const isLabel = (text: string): boolean =>
  text.length <= LONGEST_LABEL &&
  ((!SENTENCE.test(text.trim()) && !text.includes(";")) || saysAnswer(text));

/** Whether a cell stands in the lines of a list below a heading of allergens. */
const isBelowAllergens = (blocks: readonly RecipeBlock[], { sheet, row, column }: Said): boolean =>
  blocks.some(
    ({ sheet: home, range, headerRow }) =>
      home === sheet &&
      headerRow !== null &&
      row > headerRow &&
      contains(range, row, column) &&
      allergensSaid(textAt(sheet, headerRow, column)) === "heading",
  );

/** Labels and headings of numbers ("Alcohol (g)") tell nobody anything. */
const isOfNumbers = (one: Said, blocks: readonly RecipeBlock[] = []): boolean =>
  !isBelowAllergens(blocks, one) &&
  isLabel(one.text) &&
  (hasNumberRight(one) ||
    looksNumeric(one.sheet, one.row + 1, one.column) ||
    massIn(one.text) !== null);

/** Whether a text on one of some sheets says so, or the label of a number says that there is nothing to tell. */
export const saysSomewhere = (
  sheets: readonly WorkbookSheet[],
  { said, isAverted }: Pick<SaidCaution, "said" | "isAverted">,
): boolean =>
  someText(
    sheets,
    (one) => isAverted?.(one.text) === true || (said(one.text) && !isOfNumbers(one)),
  );

/** The same where the name of an ingredient may hold the word, which tells nobody either. */
export const saysBesideNames = (
  { blocks }: AuditContext,
  sheets: readonly WorkbookSheet[],
  says: (text: string) => boolean,
): boolean =>
  someText(sheets, (one) => says(one.text) && !isOfNumbers(one, blocks) && !isName(blocks, one));

const ALLERGEN =
  /milk|milch|\begg|\bei(er|gelb)?\b|\bnuts?\b|nüss|nuss|gluten|wheat|weizen|sul[fp]h?it|soy|soja|sesam|fish|fisch|\bnone\b|\bkeine\b/i;
const LIST_REACH = 12;
/** Of a ledger the first recipes tell what a column beside them is about. */
const MOST_RECIPES = 50;

/** Whether anything stands in the lines of a table below one of its headings, or right of a label, or allergens below it. */
function isFilled(blocks: readonly RecipeBlock[], { sheet, row, column }: Said): boolean {
  const tables = blocks.filter((block) => block.sheet === sheet && block.headerRow === row);
  if (tables.length === 0) {
    const beside = Array.from({ length: LIST_REACH }, (_, at) =>
      textAt(sheet, row, column + 1 + at),
    );
    return beside.some((text) => text !== "") || ALLERGEN.test(textAt(sheet, row + 1, column));
  }
  const bottom = Math.max(...tables.map(({ range }) => range.bottom));
  const below = Array.from({ length: bottom - row }, (_, at) =>
    textAt(sheet, row + 1 + at, column),
  );
  return below.some((text) => text !== "");
}

/** What an ingredient of one's own brings is said there for formulas, not for the eater. */
const isOwnIngredient = ({ ownIngredients }: AuditContext, { sheet, row, column }: Said): boolean =>
  ownIngredients.some((own) => own.sheet === sheet && contains(own.range, row, column));

/** Whether a number stands left (-1) or right of a text in its row without a blank between. */
function hasNumberOn({ sheet, row, column }: Said, side: -1 | 1): boolean {
  let at = column + side;
  while (!isBlank(sheet, row, at) && !looksNumeric(sheet, row, at)) at += side;
  return looksNumeric(sheet, row, at);
}

const hasNumberBeside = (one: Said): boolean => hasNumberOn(one, -1) || hasNumberOn(one, 1);

/** The rows of recipes beside which a column may say something: its lines, or the recipes that stand right of a cell. */
function rowsBesideColumn({ layout, names, recipes, roles, range }: RecipeBlock, column: number) {
  if (layout === "down")
    return roles.has(column) && column <= range.right ? names.map(({ row }) => row) : [];
  const isBehind = names.every((name) => name.column < column);
  return isBehind ? recipes.slice(0, MOST_RECIPES).map(({ line }) => line) : [];
}

/** Whether a cell stands in a headed column beside the lines of a recipe, or behind recipes in rows, that holds nothing but allergens. */
const isInColumnOfThem = (blocks: readonly RecipeBlock[], { sheet, row, column }: Said): boolean =>
  blocks.some((block) => {
    const { sheet: of, range, headerRow } = block;
    if (of !== sheet || headerRow === null || row <= headerRow || row > range.bottom) return false;
    if (textAt(sheet, headerRow, column) === "") return false;
    const rows = rowsBesideColumn(block, column);
    const said = rows.map((each) => textAt(sheet, each, column)).filter((text) => text !== "");
    // Behind recipes in rows one word may be what a mix is made with.
    const isSaid = block.layout === "down" || said.some((text) => !isOneWord(text));
    return said.length > 0 && isSaid && said.every(isAllergenList);
  });

/** Whether a cell stands right of a label of what is put up, or below such a heading beside each recipe. */
const isOfPutUp = (blocks: readonly RecipeBlock[], { sheet, row, column }: Said): boolean =>
  isPutUp(textAt(sheet, row, column - 1)) ||
  blocks.some(
    ({ sheet: of, range, headerRow }) =>
      of === sheet &&
      headerRow !== null &&
      contains(range, row, column) &&
      isPutUp(textAt(sheet, headerRow, column)),
  );

/** As allergens are written so that nobody misses them. */
const isInCapitals = (text: string): boolean => text === text.toUpperCase();

/** Whether a cell with allergens stands for itself: no name in a list, no heading, no label of a number. */
function isNote({ blocks }: AuditContext, one: Said): boolean {
  const { sheet, row, column, text } = one;
  if (isOfPutUp(blocks, one) || (isInColumnOfThem(blocks, one) && !isName(blocks, one)))
    return true;
  if (isTelling(text) && !isOfNumbers(one)) return true;
  const above = textAt(sheet, row - 1, column);
  const isAlone =
    isBlank(sheet, row + 1, column) &&
    (isBlank(sheet, row - 1, column) || (isInCapitals(text) && above.length > LONGEST_LABEL));
  const isBesideNumber = isLabel(text) && hasNumberBeside(one);
  if (isOfNumbers(one) || isBesideNumber || (isOneWord(text) && !isAlone)) return false;
  return !isName(blocks, one);
}

/** "Contains water (g)": a label that asks for a number tells nobody anything, however far its number stands. */
const isOfMass = ({ text }: Said): boolean =>
  text.length <= LONGEST_LABEL && unitFromHeader(text) !== null && !saysByLetters(text);

/** A longer text is a story. */
const LONGEST_LIST = 300;

/** Whether a text that is no name and labels no number gives all the allergens of some recipes. */
const isListOfAll = (
  { blocks }: AuditContext,
  one: Said,
  carried: ReadonlySet<Allergen>,
): boolean =>
  one.text.length <= LONGEST_LIST &&
  listsThemAll(one.text, carried) &&
  !isName(blocks, one) &&
  !(isLabel(one.text) && hasNumberOn(one, 1)) &&
  !isOfNumbers(one);

/** "Cream ice (milk)": a title with allergens and nothing else behind it. */
const IN_BRACKETS_BEHIND = /\p{L}.*\(([^()]+)\)$/u;

/** Whether the title of a list, with no number beside it, gives all the allergens of some recipes in brackets. */
function isTitleWithThem(
  { blocks }: AuditContext,
  one: Said,
  carried: ReadonlySet<Allergen>,
): boolean {
  const [, inside] = IN_BRACKETS_BEHIND.exec(one.text.trim()) ?? [];
  if (inside === undefined || !isAllergenList(inside) || isName(blocks, one)) return false;
  const isTitle = blocks.some(
    ({ sheet, range, headerRow, names }) =>
      sheet === one.sheet &&
      names[0]?.column === one.column &&
      (one.row === headerRow || one.row === range.top - 1),
  );
  const called = new Set(inside.split(/[,/&+]/).map(allergenCalled));
  return isTitle && [...carried].every((allergen) => called.has(allergen));
}

/** Whether the allergens of some recipes are told on one of some sheets: in a sentence, as a note, beside a label, under a heading with something under it, or all of them in a list or a table. */
export function saysAllergens(
  context: AuditContext,
  sheets: readonly WorkbookSheet[],
  carried: ReadonlySet<Allergen>,
): boolean {
  const isTold = someText(sheets, (one) => {
    if (isOwnIngredient(context, one)) return false;
    if (isAllergenList(one.text) && isNote(context, one)) return true;
    if (isTitleWithThem(context, one, carried)) return true;
    if (
      saysInList(
        one.text,
        context.blocks.filter((block) => block.sheet === one.sheet),
      )
    )
      return true;
    const said = isOfMass(one) ? null : allergensSaid(one.text);
    if (said === "statement" || (said === "heading" && isFilled(context.blocks, one))) return true;
    return isListOfAll(context, one, carried);
  });
  return (
    isTold ||
    sheets.some((sheet) => marksThemAll(sheet, carried)) ||
    context.blocks.some((block) => sheets.includes(block.sheet) && setsOffInLines(block, carried))
  );
}
