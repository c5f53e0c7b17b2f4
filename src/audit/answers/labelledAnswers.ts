import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import { firstAnswerPlace, furtherAnswerPlaces } from "./answerPlaces";
import type { IsWanted, LabelledAnswer } from "./labelledAnswer";
import { precedentsOf } from "../formulas/precedents";
import { rangesRead } from "../formulas/rangesRead";
import { isLedger } from "../recipes/isLedger";
import { hasInputsOfItsOwn } from "./inputsOfItsOwn";
import { isOfLines } from "./isOfLines";
import { isOfTableAbove } from "./isOfTableAbove";
import { labelAt } from "./labelAt";
import { nearAnswers, type IsName } from "./nearAnswers";
import { recipeBehind } from "./recipeBehind";
import { readsAmounts } from "./recipeInBlock";
import { isBlank, textAt } from "../recipes/cells";
import { type Place, type RecipeBlock, type RecipeName } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";

/** Whether a label is one of a list's headings, whose numbers stand below it. */
const isHeading = (block: RecipeBlock, sheet: WorkbookSheet, { row, column }: Place): boolean =>
  block.sheet === sheet &&
  block.headerRow === row &&
  column >= block.range.left &&
  column <= block.range.right;

/** Whether a cell stands in a column of amounts of names that run across. */
const isAmongAmounts = (block: RecipeBlock, sheet: WorkbookSheet, { row, column }: Place) =>
  block.sheet === sheet &&
  block.layout === "across" &&
  contains(block.range, row, column) &&
  block.names.some((name) => name.column === column);

/** Whether words stand in a line of a list: what stands right of them is said of that line, or of its recipe. */
const isInLine = (
  { sheet: home, layout, range, headerRow }: RecipeBlock,
  sheet: WorkbookSheet,
  { row, column }: Place,
): boolean =>
  home === sheet &&
  row > (headerRow ?? range.top - 1) &&
  row <= range.bottom &&
  (layout === "across" || column <= range.right);

/** Whether what is said of a row of amounts stands in another list, which only begins in the same row. */
const isOfListBeside = (
  blocks: readonly RecipeBlock[],
  { sheet, row, column, block: { layout, range } }: LabelledAnswer,
): boolean =>
  layout === "across" &&
  !contains(range, row, column) &&
  blocks.some((other) => other.sheet === sheet && contains(other.range, row, column));

/** Beside more lists no formula is asked which of them it reads. */
const MOST_LISTS = 60;

/** Whether a formula reads all amounts of another list, and none of that near which it stands. */
function readsOtherList(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  { sheet, row, column, block }: LabelledAnswer,
): boolean {
  const formula = sheet.cellAt(row, column)?.formula;
  if (formula === undefined || blocks.length > MOST_LISTS) return false;
  const read = rangesRead(workbook)(sheet, formula).filter(({ range }) => range.bottom > range.top);
  const reads = (one: RecipeBlock) =>
    one.recipes.some((recipe) => readsAmounts(read, { block: one, recipe }));
  return read.length > 0 && !reads(block) && blocks.some((one) => one !== block && reads(one));
}

/** Where the names of lists stand: what stands beside them is theirs. */
function namesOf(blocks: readonly RecipeBlock[]): Map<WorkbookSheet, Set<string>> {
  const places = new Map<WorkbookSheet, Set<string>>();
  for (const { sheet, names, answers } of blocks) {
    const here = places.get(sheet) ?? new Set<string>();
    places.set(sheet, here);
    // The words of a worked example may hold a name and ask for an answer.
    const isName = ({ row, column, item }: RecipeName) =>
      answers === undefined || textAt(sheet, row, column) === item;
    for (const name of names.filter(isName)) here.add(`${name.row},${name.column}`);
  }
  return places;
}

function freeAnswers(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  taken: ReadonlySet<string>,
  isWanted: IsWanted,
  isName: IsName,
): LabelledAnswer[] {
  return workbook.sheets.flatMap((sheet) => {
    const answers: LabelledAnswer[] = [];
    for (const [row, columns] of sheetTexts(sheet).columnsByRow) {
      for (const column of columns) {
        const label = labelAt(sheet, { row, column });
        if (!isWanted(label) || isName(sheet, row, column)) continue;
        const first = firstAnswerPlace(sheet, { row, column });
        const lines = blocks.filter((block) => isInLine(block, sheet, { row, column }));
        const isOfLine = lines.length > 0;
        // Words that go on with a row of recipes are one of its columns.
        const isOfRow = lines.some(({ layout }) => layout === "across");
        if (isOfRow && !isBlank(sheet, row, column - 1)) continue;
        const further = isOfLine ? [] : furtherAnswerPlaces(sheet, { row, column }, first);
        const places = first === null ? further : [first, ...further];
        if (blocks.some((block) => isOfLines(block, sheet, places))) continue;
        for (const place of places) {
          if (taken.has(`${sheet.name}!${place.row},${place.column}`)) continue;
          const isOfList = (block: RecipeBlock) =>
            isHeading(block, sheet, { row, column }) || isAmongAmounts(block, sheet, place);
          const behind = blocks.some(isOfList)
            ? null
            : recipeBehind(workbook, blocks, sheet, place, place !== first);
          if (behind === null || isOfTableAbove(behind.block, sheet, places)) continue;
          answers.push({ sheet, ...place, label, ...behind });
        }
      }
    }
    return answers;
  });
}

/** The answers whose labels are wanted, each with the recipe it belongs to. */
export function labelledAnswers(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  isWanted: IsWanted,
): LabelledAnswer[] {
  const few = blocks.filter((block) => !isLedger(block));
  const isOfItsOwn = ({ sheet, row, column, block }: LabelledAnswer) =>
    !isLedger(block) &&
    sheet.cellAt(row, column)?.formula !== undefined &&
    hasInputsOfItsOwn(precedentsOf(workbook, sheet, { row, column }), few);
  const isOfOther = (answer: LabelledAnswer) => readsOtherList(workbook, few, answer);
  const names = namesOf(blocks);
  const isName: IsName = (sheet, row, column) => names.get(sheet)?.has(`${row},${column}`) === true;
  const near = blocks
    .flatMap((block) => nearAnswers(block, isWanted, isName))
    .filter((answer) => !isOfItsOwn(answer) && !isOfListBeside(few, answer))
    .filter((answer) => !isOfOther(answer));
  const taken = new Set(near.map(({ sheet, row, column }) => `${sheet.name}!${row},${column}`));
  const free = blocks.length === 0 ? [] : freeAnswers(workbook, blocks, taken, isWanted, isName);
  return free.length === 0 ? near : [...near, ...free];
}
