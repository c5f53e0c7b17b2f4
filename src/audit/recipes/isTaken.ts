import type { CellRange } from "../../workbook/model";

/** Whether some cells of a row belong to another list. */
export const isTaken = (
  taken: readonly CellRange[],
  row: number,
  run: readonly number[],
): boolean =>
  taken.some(
    ({ top, bottom, left, right }) =>
      row >= top && row <= bottom && run.some((column) => column >= left && column <= right),
  );
