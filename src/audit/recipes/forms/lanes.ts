import type { WorkbookSheet } from "../../../workbook/model";
import { holdsNumber, isBlank, textAt } from "../cells";
import { runs } from "../sheetTexts";
import type { LabelledPair } from "./labelledPairs";

/** Labels in one column, with at most two blank rows between them. */
export const lanesOf = (pairs: readonly LabelledPair[]): LabelledPair[][] => {
  const beside = pairs.filter(({ isBelow }) => !isBelow);
  const columns = [...new Set(beside.map(({ column }) => column))];
  return columns.flatMap((column) => {
    const lane = beside.filter((pair) => pair.column === column);
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
