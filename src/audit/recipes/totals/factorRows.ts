import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";
import type { RecipeName } from "../recipeBlock";

/** So many rows of a table, and columns behind its names, tell what all its rows are multiplied with. */
const [ROWS_READ, COLUMNS_READ] = [8, 12];
const MULTIPLIES = /\b(SUMPRODUCT|MMULT)\b/i;

/**
 * The rows by which the rows of a table are multiplied, name by name: prices or energies of the ingredients, whatever
 * they are called, and no recipes.
 */
export function factorRows(
  sheet: WorkbookSheet,
  first: number,
  names: readonly RecipeName[],
): ReadonlySet<number> {
  const [from, to] = [names[0]?.column ?? 0, names.at(-1)?.column ?? 0];
  const factors = new Set<number>();
  for (let row = first; row < first + ROWS_READ; row += 1) {
    for (let column = to + 1; column <= to + COLUMNS_READ; column += 1) {
      const formula = sheet.cellAt(row, column)?.formula;
      if (formula === undefined || !MULTIPLIES.test(formula)) continue;
      const read = referencesOf(formula)
        .map(({ range }) => range)
        .filter(({ left, right, top, bottom }) => left <= from && right >= to && top === bottom)
        .map(({ top }) => top);
      if (read.includes(row)) read.filter((one) => one !== row).forEach((one) => factors.add(one));
    }
  }
  return factors;
}
