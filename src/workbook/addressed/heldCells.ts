import type { WorkbookCell } from "../model";

type CellAt = (row: number, column: number) => WorkbookCell | undefined;

/** A larger sheet's cells are made again whenever they are asked for. */
const MOST_HELD = 5000;

/** Reads a small sheet's cells once, when the first is asked for: every rule asks for each of them many times. */
export function heldCells(
  { rowCount, columnCount }: { readonly rowCount: number; readonly columnCount: number },
  cellAt: CellAt,
): CellAt {
  if (rowCount * columnCount > MOST_HELD) return cellAt;
  let rows: (WorkbookCell | undefined)[][] | null = null;
  const readAll = () =>
    Array.from({ length: rowCount }, (_, row) =>
      Array.from({ length: columnCount }, (_unused, column) => cellAt(row, column)),
    );
  return (row, column) => {
    rows ??= readAll();
    return rows[row]?.[column];
  };
}
