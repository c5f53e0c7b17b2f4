import { textAt, type Lattice } from "./lattice";

/** A column of texts, and which of its rows name an ingredient. */
export interface NameColumn {
  readonly column: number;
  readonly knownRows: readonly number[];
}

/** The columns that name ingredients, the one with the most known names first. */
export function nameColumns(
  lattice: Lattice,
  isKnown: (name: string) => boolean,
): readonly NameColumn[] {
  const columns: NameColumn[] = [];
  for (let column = 0; column < lattice.columnCount; column += 1) {
    const knownRows: number[] = [];
    for (let row = 0; row < lattice.rowCount; row += 1) {
      const text = textAt(lattice, row, column);
      if (text !== "" && isKnown(text)) knownRows.push(row);
    }
    if (knownRows.length > 0) columns.push({ column, knownRows });
  }
  return columns.sort((one, other) => other.knownRows.length - one.knownRows.length);
}
