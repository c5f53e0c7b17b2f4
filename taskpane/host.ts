import type { Workbook } from "../src/workbook/model";

/** A block of cells as read from the sheet. */
export interface CellBlock {
  readonly sheet: string;
  /** A1 address without the sheet, e.g. "B2:H9". */
  readonly address: string;
  readonly values: readonly (readonly (number | string | boolean)[])[];
  readonly formulas: readonly (readonly string[])[];
  readonly numberFormats: readonly (readonly string[])[];
}

/** All that the pane's views can ask of the spreadsheet around them. One implementation: excelHost. */
export interface SpreadsheetHost {
  /** The selected cells. A single cell stays a single cell. */
  readonly selection: () => Promise<CellBlock>;
  /** The table or the contiguous block around the selection. */
  readonly blockAroundSelection: () => Promise<CellBlock>;
  /** Writes into the cells from the selection's top left corner. Refuses when they are not empty, unless told. */
  readonly insert: (
    contents: readonly (readonly (string | number)[])[],
    options?: { readonly overwrite?: boolean },
  ) => Promise<{ readonly address: string } | { readonly refused: string }>;
  readonly readWorkbook: () => Promise<Workbook>;
  readonly goTo: (sheet: string, address: string) => Promise<void>;
  /** Calls back when the selection moves; returns how to stop. */
  readonly onSelectionChanged: (callback: () => void) => Promise<() => void>;
}
