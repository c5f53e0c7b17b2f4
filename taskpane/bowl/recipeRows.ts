import { isNumberLike, textAt, type Lattice } from "./lattice";

/** Names that the functions take for a total; below a final one no ingredient follows. */
const FINAL_TOTAL = /^(total|sum|summe)$/i;
const ANY_TOTAL = /^(total|sum|summe|subtotal|zwischensumme)$/i;

/** A cell that our own functions fill is a result, unless they only turn a measure into grams. */
const isOurResult = (formula: string): boolean =>
  /^=.*\bRIME\./i.test(formula) && !/\bRIME\.(GRAMS|AMOUNTFOR)\(/i.test(formula);

/** The header row above the first known name: skips ingredients that are not known; −1 when there is none. */
export function headerRowAbove(lattice: Lattice, nameColumn: number, firstKnown: number): number {
  for (let row = firstKnown - 1; row >= 0; row -= 1) {
    if (textAt(lattice, row, nameColumn) === "") continue;
    let hasNumber = false;
    for (let column = 0; column < lattice.columnCount; column += 1) {
      hasNumber ||= column !== nameColumn && isNumberLike(lattice.value(row, column));
    }
    if (!hasNumber) return row;
  }
  return -1;
}

export interface RecipeRows {
  readonly rows: readonly number[];
  readonly leftOut: readonly number[];
}

/** Which rows are the recipe, and which look like it but are not. */
export function recipeRows(
  lattice: Lattice,
  headerRow: number,
  names: { readonly column: number; readonly knownRows: readonly number[] },
  amounts: number,
): RecipeRows {
  const rows: number[] = [];
  const leftOut: number[] = [];
  let ended = false;
  for (let row = headerRow + 1; row < lattice.rowCount; row += 1) {
    const name = textAt(lattice, row, names.column);
    const blank = name === "" && lattice.value(row, amounts) === "";
    if (blank) continue;
    // Across, a row carries prices and results too: only what lies between known names is the recipe.
    const outside =
      lattice.direction === "across" &&
      (row < (names.knownRows[0] ?? 0) || row > (names.knownRows.at(-1) ?? 0));
    if (ended || outside || isOurResult(lattice.formula(row, amounts))) leftOut.push(row);
    else rows.push(row);
    ended ||= FINAL_TOTAL.test(name);
  }
  return { rows, leftOut };
}

export const isTotalName = (name: unknown): boolean =>
  typeof name === "string" && ANY_TOTAL.test(name.trim());
