import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";

const SUM = /^\s*(SUM|SUBTOTAL|AGGREGATE)\s*\(/i;
const LEAST_ROWS = 3;
/** Typed sums are rounded. */
const SAME = 0.002;

/** The first cell of another column that a sum adds up down to its own row, as a text; null when it is no such sum. */
function addsUpFrom(sheet: WorkbookSheet, row: number, column: number): string | null {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  const [only, ...more] = SUM.test(formula) ? referencesOf(formula) : [];
  if (only === undefined || more.length > 0 || only.sheet !== null) return null;
  const { top, bottom, left, right } = only.range;
  return bottom === row && left === right && left !== column ? `${top},${left}` : null;
}

/** Whether a cell is one of several sums, row by row, of what has been added so far. */
export function isAddedSoFar(sheet: WorkbookSheet, row: number, column: number): boolean {
  const start = addsUpFrom(sheet, row, column);
  return start !== null && [-1, 1].some((step) => addsUpFrom(sheet, row + step, column) === start);
}

/** Whether the numbers of a column, but for one perhaps, are those of another one, added up so far: what the bowl weighs after each line. */
export function isRunningSum(
  sheet: WorkbookSheet,
  items: readonly number[],
  column: number,
  other: number,
): boolean {
  const numberAt = (row: number, of: number) => {
    const value = sheet.cellAt(row, of)?.value;
    return typeof value === "number" ? value : Number.NaN;
  };
  const adds = items.filter((row, index) => {
    const before = index === 0 ? 0 : numberAt(items[index - 1] ?? row, column);
    const now = numberAt(row, column);
    return Math.abs(now - before - numberAt(row, other)) <= SAME * now;
  });
  const sums = items.filter((row) => isAddedSoFar(sheet, row, column));
  const mayFail = items.length > LEAST_ROWS ? 1 : 0;
  const isOne = adds.length >= items.length - mayFail || sums.length * 2 > items.length;
  return items.length >= LEAST_ROWS && isOne;
}
