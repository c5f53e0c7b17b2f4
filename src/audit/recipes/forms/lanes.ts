import type { WorkbookSheet } from "../../../workbook/model";
import { holdsNumber, isBlank, textAt } from "../cells";
import type { Place, RecipeBlock } from "../recipeBlock";
import { runs } from "../sheetTexts";
import { isLetters } from "./isLetters";
import type { LabelledPair } from "./labelledPairs";

/**
 * Labels in one column, with at most two blank rows between them; letters count with the words behind them where
 * other rows have their label there: "m | mass | 20" above "n | m : M | 0.1".
 */
export const lanesOf = (sheet: WorkbookSheet, pairs: readonly LabelledPair[]): LabelledPair[][] => {
  const beside = pairs.filter(({ isBelow }) => !isBelow);
  const isBehindLetters = ({ row, column }: Place) => isLetters(textAt(sheet, row, column - 1));
  const behindLetters = new Set(beside.filter(isBehindLetters).map(({ column }) => column));
  const laneOf = ({ row, column, label }: LabelledPair) =>
    behindLetters.has(column + 1) && isLetters(label) && textAt(sheet, row, column + 1) !== ""
      ? column + 1
      : column;
  const columns = [...new Set(beside.map(laneOf))];
  return columns.flatMap((column) => {
    const lane = beside.filter((pair) => laneOf(pair) === column);
    return runs(
      lane.map(({ row }) => row),
      4,
    ).map((rows) => lane.filter(({ row }) => rows.includes(row)));
  });
};

const SHORTEST_TITLE = 8;

/** Whether a row says something in words only, in the column of some labels or the one before. */
const isTitle = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  [column - 1, column].some(
    (at) => textAt(sheet, row, at).length >= SHORTEST_TITLE && isBlank(sheet, row, at + 1),
  ) && ![column, column + 1, column + 2].some((at) => holdsNumber(sheet, row, at));

/** Labels of one column, cut where a title stands between two of them. */
export function cutAtTitles(sheet: WorkbookSheet, lane: readonly LabelledPair[]): LabelledPair[][] {
  const parts: LabelledPair[][] = [];
  let last = -1;
  for (const pair of lane) {
    const between = Array.from({ length: pair.row - last - 1 }, (_, at) => last + 1 + at);
    const isCut = parts.length === 0 || between.some((row) => isTitle(sheet, row, pair.column));
    if (isCut) parts.push([pair]);
    else parts.at(-1)?.push(pair);
    last = pair.row;
  }
  return parts;
}

const LEAST_NAMES = 3;

/** Labels of one column, cut where after a gap they go on beside a list that begins there: those are its answers. */
export function cutAtLists(
  lists: readonly RecipeBlock[],
  lane: readonly LabelledPair[],
): LabelledPair[][] {
  const long = lists.filter(
    ({ layout, names }) => layout === "down" && names.length >= LEAST_NAMES,
  );
  const parts: LabelledPair[][] = [];
  let last = Number.POSITIVE_INFINITY;
  for (const pair of lane) {
    const { row, column } = pair;
    const isBeside = ({ range: { top, bottom, right } }: RecipeBlock) =>
      right < column && top > last && top <= row && row <= bottom;
    const isCut = parts.length === 0 || (row > last + 1 && long.some(isBeside));
    if (isCut) parts.push([pair]);
    else parts.at(-1)?.push(pair);
    last = row;
  }
  return parts;
}
