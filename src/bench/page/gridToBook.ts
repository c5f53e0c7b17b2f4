import {
  BooleanNumber,
  HorizontalAlign,
  WrapStrategy,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  type Nullable,
} from "@univerjs/core";
import type { CellRange } from "../../workbook/model";
import type { Book, BookCell, BookSheet, CellLook } from "../book";
import type { Grid } from "../grid";

const ALIGN: Partial<Record<HorizontalAlign, NonNullable<CellLook["align"]>>> = {
  [HorizontalAlign.LEFT]: "left",
  [HorizontalAlign.CENTER]: "center",
  [HorizontalAlign.RIGHT]: "right",
};

function hexOf(rgb: Nullable<string>): string | undefined {
  if (rgb === null || rgb === undefined) return undefined;
  if (/^#[0-9a-f]{6}$/i.test(rgb)) return rgb.toLowerCase();
  if (/^#[0-9a-f]{3}$/i.test(rgb)) return `#${rgb.slice(1).replace(/./g, "$&$&")}`.toLowerCase();
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(rgb);
  if (parts === null) return undefined;
  return `#${parts
    .slice(1, 4)
    .map((part) => Number(part).toString(16).padStart(2, "0"))
    .join("")}`;
}

function lookOf(style: IStyleData): CellLook {
  const colour = hexOf(style.cl?.rgb);
  const fill = hexOf(style.bg?.rgb);
  const align = style.ht ? ALIGN[style.ht] : undefined;
  const numberFormat = style.n?.pattern;
  return {
    ...(style.bl === BooleanNumber.TRUE ? { bold: true } : {}),
    ...(style.it === BooleanNumber.TRUE ? { italic: true } : {}),
    ...(style.fs !== undefined && style.fs !== 11 ? { fontSizePt: style.fs } : {}),
    ...(colour === undefined ? {} : { colour }),
    ...(fill === undefined ? {} : { fill }),
    ...(align === undefined ? {} : { align }),
    ...(style.tb === WrapStrategy.WRAP ? { wrap: true } : {}),
    ...(numberFormat ? { numberFormat } : {}),
  };
}

/** The look of a cell by its place, from the sheet as the grid stores it. */
function looksOf(data: Partial<IWorksheetData>, styles: IWorkbookData["styles"]) {
  return (row: number, column: number): CellLook | undefined => {
    const key = data.cellData?.[row]?.[column]?.s;
    const style = typeof key === "string" ? styles[key] : key;
    if (!style) return undefined;
    const look = lookOf(style);
    return Object.keys(look).length === 0 ? undefined : look;
  };
}

function cellsOf(
  grid: Grid,
  name: string,
  lookAt: (row: number, column: number) => CellLook | undefined,
  lookedRows: number,
  lookedColumns: number,
): (BookCell | undefined)[][] {
  const used = grid.usedRange(name);
  const whole: CellRange = {
    top: 0,
    left: 0,
    bottom: Math.max(used?.bottom ?? 0, lookedRows - 1),
    right: Math.max(used?.right ?? 0, lookedColumns - 1),
  };
  const { values, formulas } = grid.read(name, whole);
  const spills = grid.spills(name);
  return values.map((row, r) =>
    row.map((value, c) => {
      const formula = formulas[r]?.[c];
      const look = lookAt(r, c);
      if (value === null && !formula && look === undefined) return undefined;
      const range = spills.get(`${r},${c}`);
      return {
        value,
        ...(formula ? { formula: formula.slice(1) } : {}),
        ...(range === undefined ? {} : { spills: range }),
        ...(look === undefined ? {} : { look }),
      };
    }),
  );
}

function hiddenIn(data: Record<number, { hd?: BooleanNumber } | undefined>): Set<number> {
  const hidden = Object.entries(data).filter(([, entry]) => entry?.hd === BooleanNumber.TRUE);
  return new Set(hidden.map(([index]) => Number(index)));
}

function sizesIn<Key extends "w" | "h">(
  data: Record<number, { [key in Key]?: number } | undefined>,
  key: Key,
): Map<number, number> {
  const sizes = new Map<number, number>();
  for (const [index, entry] of Object.entries(data)) {
    const size = entry?.[key];
    if (size !== undefined) sizes.set(Number(index), size);
  }
  return sizes;
}

/** One more than the largest key: how far the rows, or the cells of a row, reach. */
const endOf = (places: object): number =>
  Object.keys(places).reduce((end, key) => Math.max(end, Number(key) + 1), 0);

function sheetOf(
  grid: Grid,
  data: Partial<IWorksheetData>,
  styles: IWorkbookData["styles"],
): BookSheet {
  const name = data.name ?? "";
  const cellData = data.cellData ?? {};
  const rowsOfCells: readonly object[] = Object.values(cellData);
  const lookedRows = endOf(cellData);
  const lookedColumns = rowsOfCells.reduce<number>((most, row) => Math.max(most, endOf(row)), 0);
  return {
    name,
    hidden: data.hidden === BooleanNumber.TRUE,
    rows: cellsOf(grid, name, looksOf(data, styles), lookedRows, lookedColumns),
    columnWidthsPx: sizesIn(data.columnData ?? {}, "w"),
    rowHeightsPx: sizesIn(data.rowData ?? {}, "h"),
    hiddenRows: hiddenIn(data.rowData ?? {}),
    hiddenColumns: hiddenIn(data.columnData ?? {}),
    merged: grid.merged(name),
    tables: grid.tables().filter(({ sheet }) => sheet === name),
    frozenRows: data.freeze?.ySplit ?? 0,
    frozenColumns: data.freeze?.xSplit ?? 0,
  };
}

/** The book that is open in the grid, with the values it shows now. */
export function gridToBook(grid: Grid, snapshot: IWorkbookData): Book {
  return {
    name: snapshot.name,
    sheets: snapshot.sheetOrder.map((id) =>
      sheetOf(grid, snapshot.sheets[id] ?? {}, snapshot.styles),
    ),
    names: grid.names(),
  };
}
