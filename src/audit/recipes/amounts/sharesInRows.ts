import type { WorkbookSheet } from "../../../workbook/model";
import type { Place } from "../recipeBlock";

/** The first recipes tell what all are in. */
const ROWS = 12;
const CLOSE = 0.0051;

/**
 * "fraction" where most of several recipes in rows come to 1, as the parts of a whole do; in kilograms they would be
 * the same mixes. Null for others.
 */
export function sharesInRows(
  sheet: WorkbookSheet,
  names: readonly Place[],
  first: number,
): "fraction" | null {
  const sums = Array.from({ length: ROWS }, (_, at) => first + at).flatMap((row) => {
    const values = names.map(({ column }) => sheet.cellAt(row, column)?.value);
    const numbers = values.filter((value) => typeof value === "number");
    return numbers.length > 1 ? numbers.reduce((sum, one) => sum + one, 0) : [];
  });
  const whole = sums.filter((sum) => Math.abs(sum - 1) < CLOSE);
  return whole.length > 1 && whole.length * 2 > sums.length ? "fraction" : null;
}
