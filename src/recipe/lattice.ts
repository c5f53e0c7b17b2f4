import type { Result } from "../foundation/result";

/** Values along rows and columns, each of which may be a problem of its own. Row after row. */
export interface Lattice<T> {
  readonly rows: number;
  readonly columns: number;
  readonly cells: readonly Result<T>[];
}

/** One value that stretches to any shape. */
export const single = <T>(value: Result<T>): Lattice<T> => ({
  rows: 1,
  columns: 1,
  cells: [value],
});

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

/**
 * The shape in which several lattices meet: 1 stretches to anything, so a column and a row make a rectangle.
 * Null when two of them have different lengths above 1 in one direction.
 */
export function commonShape(shapes: readonly Shape[]): Shape | null {
  let rows = 1;
  let columns = 1;
  for (const shape of shapes) {
    if (rows !== 1 && shape.rows !== 1 && shape.rows !== rows) return null;
    if (columns !== 1 && shape.columns !== 1 && shape.columns !== columns) return null;
    rows = Math.max(rows, shape.rows);
    columns = Math.max(columns, shape.columns);
  }
  return { rows, columns };
}

/** The value of a lattice at a place of the common shape. */
export function stretchedAt<T>(lattice: Lattice<T>, row: number, column: number): Result<T> {
  const { rows, columns, cells } = lattice;
  return cells[(rows === 1 ? 0 : row) * columns + (columns === 1 ? 0 : column)] as Result<T>;
}
