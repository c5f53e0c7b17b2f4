import type { CellVisitor, WorkbookSheet } from "./model";

/** Visits every cell of a sheet that is not blank, row by row. */
export function eachCell(sheet: WorkbookSheet, visit: CellVisitor): void {
  if (sheet.visitCells !== undefined) {
    sheet.visitCells(visit);
    return;
  }
  for (let row = 0; row < sheet.rowCount; row += 1) {
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const cell = sheet.cellAt(row, column);
      if (cell !== undefined) visit(row, column, cell);
    }
  }
}
