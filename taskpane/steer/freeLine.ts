import type { Lattice } from "../bowl/lattice";

/** A free column of a band of cells, or two of them where one more is needed for names. */
export interface FreeLine {
  readonly at: number;
  /** Apart from the table, with room for its own names in the column before it. */
  readonly alone: boolean;
}

/**
 * The first free column of a band: the one that ends the table, when the next one is free as well so that no
 * other table is joined on; else, or when it has to stand alone, one with two free columns before it and one
 * after. Null when there is none.
 */
export function freeLine(band: Lattice, mustStandAlone: boolean): FreeLine | null {
  const isFree = (column: number) =>
    Array.from({ length: band.rowCount }, (_, row) => row).every(
      (row) => band.formula(row, column) === "" && band.value(row, column) === "",
    );
  const columns = Array.from({ length: band.columnCount - 3 }, (_, column) => column);
  const end = columns.find(isFree);
  if (end === undefined) return null;
  if (!mustStandAlone && isFree(end + 1)) return { at: end, alone: false };
  const start = columns.find((column) => [0, 1, 2, 3].every((more) => isFree(column + more)));
  return start === undefined ? null : { at: start + 2, alone: true };
}
