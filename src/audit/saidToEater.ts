import type { WorkbookSheet } from "../workbook/model";
import { contains } from "../workbook/references";
import type { AuditContext } from "./context";
import { looksNumeric, textAt } from "./recipes/cells";
import type { RecipeBlock } from "./recipes/recipeBlock";
import { sheetTexts } from "./recipes/sheetTexts";

interface Said {
  readonly sheet: WorkbookSheet;
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

function someText({ workbook }: AuditContext, test: (said: Said) => boolean): boolean {
  return workbook.sheets.some((sheet) =>
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

/** Labels and headings of numbers ("Alcohol (g)") tell nobody anything. */
const isOfNumbers = ({ sheet, row, column }: Said): boolean =>
  looksNumeric(sheet, row, column + 1) || looksNumeric(sheet, row + 1, column);

/** Whether a text somewhere says so. */
export const saysSomewhere = (context: AuditContext, words: RegExp): boolean =>
  someText(context, (one) => words.test(one.text) && !isOfNumbers(one));

/** The same where the name of an ingredient may hold the word, which tells nobody either. */
export const saysBesideNames = (context: AuditContext, words: RegExp): boolean =>
  someText(
    context,
    (one) => words.test(one.text) && !isOfNumbers(one) && !isName(context.blocks, one),
  );

const ALLERGENS_SAID = /allerg|\b(may )?contains?\b|enthält|spuren von/i;
/** What a heading of allergens consists of. */
const HEADING_WORDS =
  /allerg\p{L}*|\b(may )?contains?\b|enthält|spuren von|cautions?|hinweise?|warn\p{L}*|notes?|labels?|\b(and|und|for|für|to|the|die|der|per|je|line|zeile)\b|[^\p{L}]/giu;
const ALLERGEN =
  /milk|milch|\begg|\bei(er|gelb)?\b|\bnuts?\b|nüss|nuss|gluten|wheat|weizen|sul[fp]h?it|soy|soja|sesam|fish|fisch|\bnone\b|\bkeine\b/i;
/** Nothing but allergens, as on a card: "Milch, Ei", "milk; tree nuts (walnuts)". */
const ONLY_ALLERGENS =
  /^(?:(?:milk|milch|eggs?|ei|eier|(?:tree )?nuts|schalenfrüchte|gluten|wheat|weizen|sulphites|sulfites|sulfite|soy|soya|soja|sesame?|fish|fisch|peanuts|erdnüsse)\b(?:\s*\([^)]*\))?[\s,;/&]*)+(?:[;.].*)?$/i;
const LIST_REACH = 12;

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

/** Whether allergens are told: in a sentence, beside a label, or under a heading with something under it. */
export function saysAllergens(context: AuditContext): boolean {
  return someText(context, (one) => {
    if (isOwnIngredient(context, one)) return false;
    if (ONLY_ALLERGENS.test(one.text)) return !isName(context.blocks, one) && !isOfNumbers(one);
    if (!ALLERGENS_SAID.test(one.text)) return false;
    return one.text.replaceAll(HEADING_WORDS, "").length > 1 || isFilled(context.blocks, one);
  });
}
