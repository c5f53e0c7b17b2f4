import { isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { eachCell } from "../../workbook/eachCell";
import type { Workbook, WorkbookCell, WorkbookSheet } from "../../workbook/model";
import { readWorkbook } from "../../workbook/readWorkbook";
import type { Book, BookCell, BookSheet } from "../book";
import { notCarried } from "./notCarried";
import { readLooks, type SheetLooks } from "./readLooks";

const MOST_BYTES_FOR_LOOKS = 2_000_000; // beyond it the second reader takes too long and too much memory

/** A book from a file, and sentences about what of the file is not in it. */
export interface OpenedBook {
  readonly book: Book;
  readonly notes: readonly string[];
}

function bookCell(cell: WorkbookCell, look: ReturnType<SheetLooks["lookAt"]>): BookCell {
  const whole = { ...look, ...(cell.format === undefined ? {} : { numberFormat: cell.format }) };
  return {
    value: cell.value,
    ...(cell.formula === undefined ? {} : { formula: cell.formula }),
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
    const content = filled.has(`${row},${column}`) ? { ...cell, value: null } : cell;
    target[column] = bookCell(content, looks?.lookAt(row, column));
  });
  return rows;
}

function bookSheet(sheet: WorkbookSheet, looks: SheetLooks | undefined): BookSheet {
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

/** Excel's own hidden names (filters, print areas) belong to parts the bench does not carry. */
const isOwnName = ({ name }: { readonly name: string }): boolean => !name.startsWith("_xlnm.");

/** Reads a user's workbook as far as the bench can show it. Unreadable: one sentence. */
export async function xlsxToBook(fileName: string, bytes: Uint8Array): Promise<Result<OpenedBook>> {
  const workbook: Result<Workbook> = await readWorkbook(bytes);
  if (isProblem(workbook)) return workbook;
  const looks = bytes.length > MOST_BYTES_FOR_LOOKS ? null : await readLooks(bytes);
  const book = {
    name: fileName.replace(/\.xls[xm]$/i, ""),
    sheets: workbook.sheets.map((sheet) => bookSheet(sheet, looks?.get(sheet.name))),
    names: workbook.names.filter(isOwnName),
  };
  return { book, notes: notCarried(bytes, workbook, looks) };
}
