import type { Shape } from "./lattice";

/** Where a cell stands in an argument, as a sentence calls it: "grams", "grams, row 3", "grams, row 3, column 2". */
export function placeIn(argument: string, { rows, columns }: Shape, row: number, column: number) {
  if (rows === 1 && columns === 1) return argument;
  if (columns === 1) return `${argument}, row ${row + 1}`;
  if (rows === 1) return `${argument}, column ${column + 1}`;
  return `${argument}, row ${row + 1}, column ${column + 1}`;
}
