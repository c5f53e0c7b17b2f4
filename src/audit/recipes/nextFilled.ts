import type { WorkbookSheet } from "../../workbook/model";
import { isBlank } from "./cells";

/** People leave so many rows free under headings, above totals and between answers, and no more in one list. */
const MOST_FREE = 2;

/**
 * The next row, down or up, in which one of some columns is filled, over the rows that are left free there; the row
 * right after where all within reach are.
 */
export function nextRow(
  sheet: WorkbookSheet,
  row: number,
  columns: readonly number[],
  step: 1 | -1 = 1,
): number {
  for (let away = 1; away <= MOST_FREE + 1; away += 1) {
    const at = row + step * away;
    if (columns.some((column) => !isBlank(sheet, at, column))) return at;
  }
  return row + step;
}

/** The next column, to the right or the left, that is filled in a row, over one that is left free; else the one right beside. */
export function nextColumn(
  sheet: WorkbookSheet,
  row: number,
  column: number,
  step: 1 | -1 = 1,
): number {
  const far = column + 2 * step;
  return isBlank(sheet, row, column + step) && !isBlank(sheet, row, far) ? far : column + step;
}
