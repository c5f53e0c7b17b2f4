import type { WorkbookSheet } from "../../workbook/model";
import { goesOnBeyond } from "./goesOnBeyond";
import { isEmptyBeside, type Segment } from "./segments";

/** Whether an empty column lies between a list's names and a column that does not go on with the list. */
export const isParted = (
  sheet: WorkbookSheet,
  segment: Segment,
  items: readonly number[],
  column: number,
): boolean => {
  const [from, to] = [Math.min(column, segment.column), Math.max(column, segment.column)];
  const between = Array.from({ length: to - from - 1 }, (_, at) => from + 1 + at);
  return (
    between.some((each) => isEmptyBeside(sheet, segment, items, each)) &&
    !goesOnBeyond(sheet, segment, items, column)
  );
};
