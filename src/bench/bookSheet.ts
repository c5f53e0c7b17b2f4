import { eachCell } from "../workbook/eachCell";
import type { WorkbookCell, WorkbookSheet } from "../workbook/model";
import { linkedWorkbook } from "../workbook/linkedWorkbook";
import type { BookCell, BookSheet } from "./book";
import type { SheetLooks } from "./xlsx/readLooks";

function bookCell(cell: WorkbookCell, look: ReturnType<SheetLooks["lookAt"]>): BookCell {
  const whole = { ...look, ...(cell.format === undefined ? {} : { numberFormat: cell.format }) };
  const { formula } = cell;
  // The grid cannot look into another workbook, and a copy has no link to it: what it last gave is kept.
  const isKept = formula !== undefined && linkedWorkbook(formula) === null;
  return {
    value: cell.value,
    ...(isKept ? { formula } : {}),
    ...(cell.spills === undefined ? {} : { spills: cell.spills }),
    ...(Object.keys(whole).length === 0 ? {} : { look: whole }),
  };
}

/** What formulas filled besides their own cells is no content: the formulas will fill it again. */
function filledCells(sheet: WorkbookSheet): ReadonlySet<string> {
  const filled = new Set<string>();
  eachCell(sheet, (row, column, { spills }) => {
    if (spills === undefined) return;
    for (let r = spills.top; r <= spills.bottom; r += 1) {
      for (let c = spills.left; c <= spills.right; c += 1) filled.add(`${r},${c}`);
    }
    filled.delete(`${row},${column}`);
  });
  return filled;
}

function rowsOf(sheet: WorkbookSheet, looks: SheetLooks | undefined): (BookCell | undefined)[][] {
  const filled = filledCells(sheet);
  const rows: (BookCell | undefined)[][] = Array.from({ length: sheet.rowCount }, () => []);
  eachCell(sheet, (row, column, cell) => {
    const target = rows[row];
    if (target === undefined) return;
    const content = bookCell(cell, looks?.lookAt(row, column));
    target[column] = filled.has(`${row},${column}`) ? { ...content, value: null } : content;
  });
  return rows;
}

/** A sheet of the model as the bench carries it, with its looks where they are known. */
export function bookSheet(sheet: WorkbookSheet, looks?: SheetLooks): BookSheet {
  const { name, hidden, hiddenRows, hiddenColumns, merged, tables } = sheet;
  return {
    name,
    hidden,
    hiddenRows,
    hiddenColumns,
    merged,
    tables,
    rows: rowsOf(sheet, looks),
    columnWidthsPx: looks?.columnWidthsPx ?? new Map(),
    rowHeightsPx: looks?.rowHeightsPx ?? new Map(),
    frozenRows: looks?.frozenRows ?? 0,
    frozenColumns: looks?.frozenColumns ?? 0,
  };
}
