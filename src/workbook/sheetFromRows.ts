import type { WorkbookCell, WorkbookSheet, WorkbookValue } from "./model";

/** A cell in short: a value, or a value with its formula and format; null and undefined are blank. */
export type ShortCell = WorkbookValue | WorkbookCell | undefined;

const isCell = (cell: ShortCell): cell is WorkbookCell =>
  typeof cell === "object" && cell !== null && "value" in cell;

function expanded(cell: ShortCell): WorkbookCell | undefined {
  if (cell === undefined || cell === null || cell === "") return undefined;
  return isCell(cell) ? cell : { value: cell };
}

/** A sheet of the model from rows held in memory, e.g. the live workbook's used range. */
export function sheetFromRows(
  name: string,
  rows: readonly (readonly ShortCell[])[],
  extras: Partial<
    Pick<
      WorkbookSheet,
      "hidden" | "tables" | "merged" | "hiddenRows" | "hiddenColumns" | "filtered"
    >
  > = {},
): WorkbookSheet {
  return {
    name,
    hidden: false,
    rowCount: rows.length,
    columnCount: rows.reduce((widest, row) => Math.max(widest, row.length), 0),
    cellAt: (row, column) => expanded(rows[row]?.[column]),
    tables: [],
    merged: [],
    hiddenRows: new Set(),
    hiddenColumns: new Set(),
    ...extras,
  };
}
