import type { WorkbookSheet } from "../../workbook/model";
import type { Place } from "../recipes/recipeBlock";
import { columnSums } from "./columnSums";

/** A sum stands at most so many rows below what it counts. */
const REACH_DOWN = 60;

/** Whether a sum below counts a number together with the one above it: then it is a line, whatever word stands beside it. */
export function isLineOfSum(sheet: WorkbookSheet, { row, column }: Place): boolean {
  const sums = columnSums(sheet);
  const below = Array.from({ length: REACH_DOWN }, (_, step) => sums.get(row + 1 + step) ?? []);
  return below
    .flat()
    .some(({ column: at, range }) => at === column && range.top < row && range.bottom >= row);
}
