import type { BookCell, BookSheet, CellLook } from "../book";

/** Short words for writing sheets by hand. */
export type DemoCell = BookCell | undefined;

const HEADING_FILL = "#e8eef3";

export const text = (value: string, look?: CellLook): BookCell => ({
  value,
  ...(look === undefined ? {} : { look }),
});

export const title = (value: string): BookCell => text(value, { bold: true, fontSizePt: 15 });

export const hint = (value: string): BookCell => text(value, { italic: true, colour: "#5a6570" });

export const heading = (value: string, align: CellLook["align"] = "left"): BookCell =>
  text(value, { bold: true, fill: HEADING_FILL, align, wrap: true });

export const number = (value: number, numberFormat = "0"): BookCell => ({
  value,
  look: { numberFormat },
});

/** A formula, without "=". */
export const formula = (written: string, numberFormat?: string): BookCell => ({
  value: null,
  formula: written,
  ...(numberFormat === undefined ? {} : { look: { numberFormat } }),
});

/** A cell that a formula above fills: only its format is set. */
export const filled = (numberFormat?: string): DemoCell =>
  numberFormat === undefined ? undefined : { value: null, look: { numberFormat } };

/** A sheet from its rows and the widths of its columns, the rest plain. */
export function sheet(
  name: string,
  rows: readonly (readonly DemoCell[])[],
  widthsPx: readonly number[],
  more: Partial<BookSheet> = {},
): BookSheet {
  return {
    name,
    hidden: false,
    rows,
    columnWidthsPx: new Map(widthsPx.map((width, column) => [column, width])),
    rowHeightsPx: new Map(),
    hiddenRows: new Set(),
    hiddenColumns: new Set(),
    merged: [],
    tables: [],
    frozenRows: 0,
    frozenColumns: 0,
    ...more,
  };
}
