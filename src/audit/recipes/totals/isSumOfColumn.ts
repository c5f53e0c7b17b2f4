import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";
import { isAddedSoFar } from "./runningSums";

const SUMS = /\b(SUM|SUBTOTAL|AGGREGATE)\s*\(/i;

/** Whether a cell adds up others of a column: a sum along its own row is what a week takes of one ingredient, one of those line by line what is in the bowl. */
export function isSumOfColumn(sheet: WorkbookSheet, row: number, column: number): boolean {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  if (!SUMS.test(formula) || isAddedSoFar(sheet, row, column)) return false;
  const ranges = referencesOf(formula);
  return (
    ranges.length === 0 || ranges.some(({ range }) => range.top !== row || range.bottom !== row)
  );
}
