import { eachCell } from "./eachCell";
import type { CellVisitor, WorkbookSheet } from "./model";

/** Visits every cell of a sheet that holds a formula, row by row, without making the others. */
export function eachFormula(sheet: WorkbookSheet, visit: CellVisitor): void {
  if (sheet.visitFormulas !== undefined) {
    sheet.visitFormulas(visit);
    return;
  }
  eachCell(sheet, (row, column, cell) => {
    if ((cell.sharedFormula ?? cell.formula) !== undefined) visit(row, column, cell);
  });
}
