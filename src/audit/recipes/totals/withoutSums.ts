import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";
import { looksNumeric } from "../cells";
import { isRunningSum } from "./runningSums";

const SUM = /^\s*(SUM|SUBTOTAL|AGGREGATE)\s*\(/i;

/** How many rows of another column a formula adds up; 0 when it does something else. */
function rowsAdded(formula: string, column: number): number {
  const [read, ...more] = SUM.test(formula) ? referencesOf(formula) : [];
  if (read === undefined || more.length > 0 || read.sheet !== null) return 0;
  const { top, bottom, left, right } = read.range;
  return left === right && left !== column ? bottom - top + 1 : 0;
}

/**
 * Whether most numbers of a column sum up another column, in fewer than half of its rows, or all of them do a
 * few rows of one each: totals beside a list, what each vessel holds.
 */
function isOfSums(sheet: WorkbookSheet, items: readonly number[], column: number): boolean {
  const filled = items.filter((row) => looksNumeric(sheet, row, column));
  const sums = filled.filter((row) => {
    const formula = sheet.cellAt(row, column)?.formula ?? "";
    const read = referencesOf(formula);
    return SUM.test(formula) && read.every(({ range: { left } }) => left !== column);
  });
  const added = filled.map((row) => rowsAdded(sheet.cellAt(row, column)?.formula ?? "", column));
  const areParts =
    filled.length < items.length && !added.includes(0) && added.some((rows) => rows > 1);
  return areParts || (filled.length * 2 < items.length && sums.length * 2 > filled.length);
}

/** The columns of amounts without those that only sum up another one, here and there or line by line. */
export function withoutSums(
  sheet: WorkbookSheet,
  items: readonly number[],
  columns: readonly number[],
): readonly number[] {
  const isRunning = (column: number) =>
    columns.some((other) => other !== column && isRunningSum(sheet, items, column, other));
  const amounts = columns.filter((column) => !isOfSums(sheet, items, column) && !isRunning(column));
  return amounts.length > 0 ? amounts : columns;
}
