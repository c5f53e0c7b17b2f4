import type { FinderContext } from "../finderContext";
import type { RecipeName } from "../recipeBlock";

const ROWS_READ = 12;
const CLOSE = 0.0005;
/** A count may be small beside the grams: a total that leaves it out is nearer than a part of it. */
const PART = 0.25;
/** One row may leave out what it should not. */
const LEAST_ROWS = 2;

/**
 * Columns under an unknown word before the first ingredient that the totals of the rows leave out, one and all: how
 * often each is made, for how many it is, what it is numbered.
 */
export function countsAcross(
  { sheet, check }: FinderContext,
  first: number,
  names: readonly RecipeName[],
  totals: readonly number[],
): readonly number[] {
  const start = names.findIndex(({ item }) => check(item).kind !== "unknown");
  if (start < 1 || totals.length === 0) return [];
  const numberAt = (row: number, column: number): number => {
    const value = sheet.cellAt(row, column)?.value;
    return typeof value === "number" ? value : 0;
  };
  const isTotal = (row: number, sum: number, least: number) =>
    totals.some((column) => Math.abs(numberAt(row, column) - sum) <= Math.min(CLOSE * sum, least));
  const rows = Array.from({ length: ROWS_READ }, (_, step) => first + step);
  return names.slice(0, start).flatMap(({ column }, at) => {
    const restOf = (row: number) =>
      names.slice(at + 1).reduce((sum, one) => sum + numberAt(row, one.column), 0);
    // Answers below the table stand beside no amounts.
    const filled = rows.filter((row) => numberAt(row, column) > 0 && restOf(row) > 0);
    const leftOut = filled.filter((row) => isTotal(row, restOf(row), PART * numberAt(row, column)));
    return leftOut.length >= LEAST_ROWS && leftOut.length * 2 > filled.length ? [column] : [];
  });
}
