import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";
import { nextColumn } from "../nextFilled";

/** "B5+B9", "SUM(B5,B9)": cells, one by one, and nothing else. */
const PLAIN_ADDITION =
  /^\s*(SUM\s*\()?\s*\$?[A-Z]{1,3}\$?\d+(\s*[+,;]\s*\$?[A-Z]{1,3}\$?\d+)*\s*\)?\s*$/i;

/** Whether a row adds up, beside its words, the totals of a list that stand above it, all of them and nothing else. */
export function addsTotals(
  sheet: WorkbookSheet,
  row: number,
  column: number,
  totals: readonly number[],
): boolean {
  if (totals.length === 0) return false;
  return [nextColumn(sheet, row, column), column - 1].some((at) => {
    const formula = sheet.cellAt(row, at)?.formula;
    if (formula === undefined || !PLAIN_ADDITION.test(formula)) return false;
    const read = referencesOf(formula).map(({ range }) => range);
    const isTotal = (total: number) => read.some(({ top, left }) => top === total && left === at);
    return read.length === totals.length && totals.every(isTotal);
  });
}
