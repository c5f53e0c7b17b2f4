import { sheetFromRows, type ShortCell } from "../../src/workbook/sheetFromRows";
import type {
  CellRange,
  WorkbookSheet,
  WorkbookTable,
  WorkbookValue,
} from "../../src/workbook/model";
import { EXTENT_PROPERTIES } from "./blockAround";
import { goOnUnless } from "./cancelled";
import { hiddenLines } from "./hiddenLines";
import { loadedRows } from "./loadedRows";
import { askFilter } from "./setFilters";

const CELLS_AT_ONCE = 40000; // about 2 MB of values, formulas and formats

const ERROR_TEXT = /^#(N\/A|[A-Z0-9/]+[!?])$/;

function valueOf(value: unknown): WorkbookValue {
  if (typeof value === "string") return ERROR_TEXT.test(value) ? { error: value } : value;
  return typeof value === "number" || typeof value === "boolean" ? value : null;
}

function cellOf(value: unknown, formula: unknown, format: unknown): ShortCell {
  const typed = typeof formula === "string" && formula.startsWith("=") ? formula.slice(1) : null;
  if (value === "" && typed === null) return undefined;
  const isPlain = typeof format !== "string" || format === "General" || format === "";
  return {
    value: valueOf(value),
    ...(typed === null ? {} : { formula: typed }),
    ...(isPlain ? {} : { format }),
  };
}

interface SheetOptions {
  readonly mostRows: number | undefined;
  readonly signal: AbortSignal | undefined;
}

async function cellRows(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  used: Excel.Range,
  { mostRows = Infinity, signal }: SheetOptions,
): Promise<ShortCell[][]> {
  const { rowIndex, columnIndex, columnCount } = used;
  const rowCount = Math.min(used.rowCount, mostRows);
  const rows: ShortCell[][] = Array.from({ length: rowIndex }, () => []);
  const before: ShortCell[] = Array.from({ length: columnIndex }, () => undefined);
  const step = Math.max(1, Math.floor(CELLS_AT_ONCE / columnCount));
  for (let done = 0; done < rowCount; done += step) {
    const count = Math.min(step, rowCount - done);
    const part = sheet.getRangeByIndexes(rowIndex + done, columnIndex, count, columnCount);
    part.load("values,formulas,numberFormat");
    await context.sync();
    goOnUnless(signal);
    const formulas = loadedRows(part.formulas);
    const formats = loadedRows(part.numberFormat);
    loadedRows(part.values).forEach((values, row) => {
      const cells = values.map((value, column) =>
        cellOf(value, formulas[row]?.[column], formats[row]?.[column]),
      );
      rows.push([...before, ...cells]);
    });
  }
  return rows;
}

interface FilteredTable extends WorkbookTable {
  readonly filtered: readonly CellRange[];
}

/** A sheet of the live workbook as the model has it. Merged cells are not asked for: that would clear undo. */
export async function readSheet(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  tables: readonly FilteredTable[],
  options: SheetOptions,
): Promise<WorkbookSheet> {
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load(EXTENT_PROPERTIES);
  const filter = askFilter(sheet);
  await context.sync();
  const hidden = (sheet.visibility as string) !== "Visible";
  if (used.isNullObject) return sheetFromRows(sheet.name, [], { hidden, tables });
  const rows = await cellRows(context, sheet, used, options);
  const headed = tables.map(({ name, range, hasTotals }) => ({
    ...{ name, range, hasTotals },
    columns: headersOf(rows, range),
  }));
  if (options.mostRows !== undefined)
    return sheetFromRows(sheet.name, rows, { hidden, tables: headed });
  const ownFilter = filter();
  return sheetFromRows(sheet.name, rows, {
    hidden,
    tables: headed,
    ...(ownFilter && { filtered: [...ownFilter, ...tables.flatMap(({ filtered }) => filtered)] }),
    hiddenRows: await hiddenLines(context, sheet, used, "row"),
    hiddenColumns: await hiddenLines(context, sheet, used, "column"),
  });
}

function headersOf(rows: readonly (readonly ShortCell[])[], range: CellRange): string[] {
  const headers: string[] = [];
  for (let column = range.left; column <= range.right; column += 1) {
    const cell = rows[range.top]?.[column];
    const value = typeof cell === "object" && cell !== null && "value" in cell ? cell.value : cell;
    headers.push(typeof value === "string" || typeof value === "number" ? String(value) : "");
  }
  return headers;
}
