import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRowData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import { eachCell } from "../eachCell";
import type { CellRange, Workbook, WorkbookCell, WorkbookSheet, WorkbookValue } from "../model";

/** Says which formulas are to be calculated; all others enter the grid as the value they were stored with. */
export type KeepFormula = (
  sheet: number,
  row: number,
  column: number,
  cell: WorkbookCell,
) => boolean;

export const GRID_UNIT = "workbook";
export const gridSheetId = (sheet: number): string => `sheet${sheet}`;

// Room for answers that spill beyond the last used cell.
const SPARE_ROWS = 1000;
const SPARE_COLUMNS = 100;

type CellRows = Record<number, Record<number, ICellData>>;

function constant(value: WorkbookValue): ICellData {
  if (value === null) return {};
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: typeof value === "string" ? value : value.error, t: CellValueType.STRING };
}

function clear(cells: CellRows, { top, left, bottom, right }: CellRange): void {
  for (let row = top; row <= bottom; row += 1) {
    for (let column = left; column <= right; column += 1) {
      if (row !== top || column !== left) Reflect.deleteProperty(cells[row] ?? {}, column);
    }
  }
}

function cellsOf(sheet: WorkbookSheet, index: number, keep: KeepFormula): CellRows {
  const cells: CellRows = {};
  const spills: CellRange[] = [];
  eachCell(sheet, (row, column, cell) => {
    const kept = cell.formula !== undefined && keep(index, row, column, cell);
    const stored = constant(cell.value);
    (cells[row] ??= {})[column] = kept ? { ...stored, f: `=${cell.formula ?? ""}` } : stored;
    if (kept && cell.spills !== undefined) spills.push(cell.spills);
  });
  // What a kept formula filled last time must not stand in the way of its new answer.
  for (const range of spills) clear(cells, range);
  return cells;
}

/** SUBTOTAL and AGGREGATE ask which rows are hidden. */
const hiddenRowsOf = ({ hiddenRows }: WorkbookSheet): Record<number, Partial<IRowData>> =>
  Object.fromEntries([...hiddenRows].map((row) => [row, { hd: BooleanNumber.TRUE }]));

/** A workbook as the grid loads it. */
export function gridSnapshot(workbook: Workbook, keep: KeepFormula): Partial<IWorkbookData> {
  const sheets: Record<string, Partial<IWorksheetData>> = {};
  workbook.sheets.forEach((sheet, index) => {
    sheets[gridSheetId(index)] = {
      id: gridSheetId(index),
      name: sheet.name,
      rowCount: sheet.rowCount + SPARE_ROWS,
      columnCount: sheet.columnCount + SPARE_COLUMNS,
      cellData: cellsOf(sheet, index, keep),
      rowData: hiddenRowsOf(sheet),
    };
  });
  return {
    id: GRID_UNIT,
    sheetOrder: workbook.sheets.map((_, index) => gridSheetId(index)),
    sheets,
  };
}
