import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";
import { isSumOfColumn } from "./isSumOfColumn";

/** Whether one formula adds up the lines of a list in a column, all of them or all but one at an end. */
export function addsList(
  sheet: WorkbookSheet,
  row: number,
  column: number,
  items: readonly number[],
): boolean {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  const [only, ...more] = referencesOf(formula);
  if (only === undefined || more.length > 0 || items.length < 3) return false;
  if (!isSumOfColumn(sheet, row, column) || !/^=?\s*\w+\s*\([^()]*\)\s*$/.test(formula))
    return false;
  const { top, bottom, left, right } = only.range;
  const added = items.filter((item) => item >= top && item <= bottom);
  return left === column && right === column && added.length >= items.length - 1;
}
