import {
  BooleanNumber,
  CellValueType,
  HorizontalAlign,
  LocaleType,
  VerticalAlign,
  WrapStrategy,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import { isErrorValue, type Book, type BookCell, type BookSheet, type CellLook } from "../book";

const ROOM_ROWS = 200; // spare rows and columns to type into
const ROOM_COLUMNS = 12;
const LEAST_ROWS = 400;
const LEAST_COLUMNS = 26;

const HORIZONTAL = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
} as const;

const on = (flag: boolean | undefined): BooleanNumber =>
  flag ? BooleanNumber.TRUE : BooleanNumber.FALSE;

function styleOf(look: CellLook): IStyleData {
  return {
    ...(look.bold ? { bl: on(true) } : {}),
    ...(look.italic ? { it: on(true) } : {}),
    ...(look.fontSizePt !== undefined ? { fs: look.fontSizePt } : {}),
    ...(look.colour !== undefined ? { cl: { rgb: look.colour } } : {}),
    ...(look.fill !== undefined ? { bg: { rgb: look.fill } } : {}),
    ...(look.align !== undefined ? { ht: HORIZONTAL[look.align] } : {}),
    ...(look.wrap ? { tb: WrapStrategy.WRAP, vt: VerticalAlign.TOP } : {}),
    ...(look.numberFormat !== undefined ? { n: { pattern: look.numberFormat } } : {}),
  };
}

function contentOf({ value, formula }: BookCell): ICellData {
  if (formula !== undefined) return { f: `=${formula}` };
  if (value === null) return {};
  if (isErrorValue(value)) return { v: value.error, t: CellValueType.STRING };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING };
}

/** One style for each distinct look, as the grid keeps them in one list for the whole book. */
class Styles {
  private readonly keys = new Map<string, string>();
  readonly list: Record<string, IStyleData> = {};

  keyOf(look: CellLook): string {
    const text = JSON.stringify(look);
    const known = this.keys.get(text);
    if (known !== undefined) return known;
    const key = `look${this.keys.size}`;
    this.keys.set(text, key);
    this.list[key] = styleOf(look);
    return key;
  }
}

function cellsOf(sheet: BookSheet, styles: Styles): Record<number, Record<number, ICellData>> {
  const matrix: Record<number, Record<number, ICellData>> = {};
  sheet.rows.forEach((row, rowIndex) => {
    const cells: Record<number, ICellData> = {};
    row.forEach((cell, columnIndex) => {
      if (cell === undefined) return;
      const style = cell.look === undefined ? {} : { s: styles.keyOf(cell.look) };
      cells[columnIndex] = { ...contentOf(cell), ...style };
    });
    matrix[rowIndex] = cells;
  });
  return matrix;
}

function sizesOf(
  sizes: ReadonlyMap<number, number>,
  hidden: ReadonlySet<number>,
  key: "w" | "h",
): Record<number, Record<string, number>> {
  const data: Record<number, Record<string, number>> = {};
  for (const [index, size] of sizes) data[index] = { [key]: size };
  for (const index of hidden) data[index] = { ...data[index], hd: BooleanNumber.TRUE };
  return data;
}

function sheetData(sheet: BookSheet, id: string, styles: Styles): Partial<IWorksheetData> {
  const columns = sheet.rows.reduce((most, row) => Math.max(most, row.length), 0);
  return {
    id,
    name: sheet.name,
    hidden: on(sheet.hidden),
    rowCount: Math.max(LEAST_ROWS, sheet.rows.length + ROOM_ROWS),
    columnCount: Math.max(LEAST_COLUMNS, columns + ROOM_COLUMNS),
    cellData: cellsOf(sheet, styles),
    columnData: sizesOf(sheet.columnWidthsPx, sheet.hiddenColumns, "w"),
    rowData: sizesOf(sheet.rowHeightsPx, sheet.hiddenRows, "h"),
    mergeData: sheet.merged.map(({ top, left, bottom, right }) => ({
      startRow: top,
      startColumn: left,
      endRow: bottom,
      endColumn: right,
    })),
    freeze: {
      xSplit: sheet.frozenColumns,
      ySplit: sheet.frozenRows,
      startRow: sheet.frozenRows > 0 ? sheet.frozenRows : -1,
      startColumn: sheet.frozenColumns > 0 ? sheet.frozenColumns : -1,
    },
  };
}

/** A book as the grid takes it. Tables and names are added through the grid's own commands afterwards. */
export function bookToGrid(book: Book, id: string): IWorkbookData {
  const styles = new Styles();
  const sheets: Record<string, Partial<IWorksheetData>> = {};
  book.sheets.forEach((sheet, index) => {
    sheets[`sheet${index + 1}`] = sheetData(sheet, `sheet${index + 1}`, styles);
  });
  return {
    id,
    name: book.name,
    appVersion: "0.25.1",
    locale: LocaleType.EN_US,
    styles: styles.list,
    sheetOrder: Object.keys(sheets),
    sheets,
  };
}
