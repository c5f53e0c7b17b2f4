import { isNumberLike, textAt, type Lattice } from "./lattice";

/** Names that the functions take for a total; below a final one no ingredient follows. */
const FINAL_TOTAL = /^(total|sum|summe)$/i;
const ANY_TOTAL = /^(total|sum|summe|subtotal|zwischensumme)$/i;

/** A cell that our own functions fill is a result, unless they only turn a measure into grams. */
const isOurResult = (formula: string): boolean =>
  /^=.*\bRIME\./i.test(formula) && !/\bRIME\.(GRAMS|AMOUNTFOR)\(/i.test(formula);

const hasNumber = (lattice: Lattice, row: number, besides: number): boolean =>
  Array.from({ length: lattice.columnCount }, (_, column) => column).some(
    (column) => column !== besides && isNumberLike(lattice.value(row, column)),
  );

/**
 * The header row above the first known name: the nearest text without a number beside it, so that an
 * unknown ingredient is not taken for a header. Across it is the outermost one, where the recipes' names
 * stand before what is reckoned of them. −1 when there is none.
 */
export function headerRowAbove(lattice: Lattice, nameColumn: number, firstKnown: number): number {
  const above = Array.from({ length: firstKnown }, (_, row) => row).filter(
    (row) => textAt(lattice, row, nameColumn) !== "" && !hasNumber(lattice, row, nameColumn),
  );
  return (lattice.direction === "down" ? above.at(-1) : above[0]) ?? -1;
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
    if (outside) continue;
    if (ended || isOurResult(lattice.formula(row, amounts))) leftOut.push(row);
    else rows.push(row);
    ended ||= FINAL_TOTAL.test(name);
  }
  return { rows, leftOut };
}

export const isTotalName = (name: unknown): boolean =>
  typeof name === "string" && ANY_TOTAL.test(name.trim());
