import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import { isAnswer, type IsWanted, type LabelledAnswer } from "./labelledAnswer";
import { precedentsOf } from "../formulas/precedents";
import { isLedger } from "../recipes/isLedger";
import { hasInputsOfItsOwn } from "./inputsOfItsOwn";
import { nearAnswers } from "./nearAnswers";
import { recipeBehind } from "./recipeBehind";
import { isBlank, textAt } from "../recipes/cells";
import { type Place, type RecipeBlock } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";

/** Answers stand at most this far beside their label. */
const REACH_BESIDE = 4;
/** Or so far before it. */
const REACH_BEFORE = 2;

/** The answer that belongs to a free label: the first one to its right, else one below it, else one left of it. */
function valuePlace(sheet: WorkbookSheet, { row, column }: Place): Place | null {
  for (let at = column + 1; at <= column + REACH_BESIDE; at += 1) {
    if (isAnswer(sheet, row, at)) return { row, column: at };
    if (textAt(sheet, row, at).length > 8) break;
  }
  return placeBelow(sheet, { row, column }) ?? placeBefore(sheet, { row, column });
}

/** The only number left of a label that nothing stands right of, and no other label before. */
function placeBefore(sheet: WorkbookSheet, { row, column }: Place): Place | null {
  const before = Array.from({ length: column }, (_, at) => at).filter(
    (at) => !isBlank(sheet, row, at),
  );
  const [only, ...more] = before;
  const isOne = only !== undefined && more.length === 0 && column - only <= REACH_BEFORE;
  return isOne && isBlank(sheet, row, column + 1) && isAnswer(sheet, row, only)
    ? { row, column: only }
    : null;
}

/** One number below its label, in a row of such labels: answers may stand across a row. */
function placeBelow(sheet: WorkbookSheet, { row, column }: Place): Place | null {
  const beside = [column - 1, column + 1].some((at) => textAt(sheet, row, at) !== "");
  const isOne = isAnswer(sheet, row + 1, column) && !isAnswer(sheet, row + 2, column);
  return beside && isOne ? { row: row + 1, column } : null;
}

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

/** Where the names of lists stand: what stands beside them is theirs. */
function namesOf(blocks: readonly RecipeBlock[]): Map<WorkbookSheet, Set<string>> {
  const places = new Map<WorkbookSheet, Set<string>>();
  for (const { sheet, names, answers } of blocks) {
    const here = places.get(sheet) ?? new Set<string>();
    places.set(sheet, here);
    // The words of a worked example may hold a name and ask for an answer.
    if (answers === undefined) for (const { row, column } of names) here.add(`${row},${column}`);
  }
  return places;
}

function freeAnswers(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  taken: ReadonlySet<string>,
  isWanted: IsWanted,
): LabelledAnswer[] {
  const names = namesOf(blocks);
  return workbook.sheets.flatMap((sheet) => {
    const answers: LabelledAnswer[] = [];
    for (const [row, columns] of sheetTexts(sheet).columnsByRow) {
      for (const column of columns) {
        const label = textAt(sheet, row, column);
        if (!isWanted(label) || names.get(sheet)?.has(`${row},${column}`) === true) continue;
        const place = valuePlace(sheet, { row, column });
        if (place === null || taken.has(`${sheet.name}!${place.row},${place.column}`)) continue;
        const isOfList = (block: RecipeBlock) =>
          isHeading(block, sheet, { row, column }) || isAmongAmounts(block, sheet, place);
        const behind = blocks.some(isOfList) ? null : recipeBehind(workbook, blocks, sheet, place);
        if (behind !== null) answers.push({ sheet, ...place, label, ...behind });
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
  const near = blocks
    .flatMap((block) => nearAnswers(block, isWanted))
    .filter((answer) => !isOfItsOwn(answer));
  const taken = new Set(near.map(({ sheet, row, column }) => `${sheet.name}!${row},${column}`));
  const free = blocks.length === 0 ? [] : freeAnswers(workbook, blocks, taken, isWanted);
  return free.length === 0 ? near : [...near, ...free];
}
