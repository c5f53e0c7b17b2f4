import type { Workbook } from "../src/workbook/model";

/** A value as the sheet hands it over: "" is a blank cell, an error is its text, e.g. "#N/A". */
export type BlockValue = number | string | boolean;

/** A block of cells as read from the sheet. */
export interface CellBlock {
  readonly sheet: string;
  /** A1 address without the sheet, e.g. "B2:H9". */
  readonly address: string;
  /** Zero-based place of the top left cell. */
  readonly top: number;
  readonly left: number;
  readonly values: readonly (readonly BlockValue[])[];
  readonly formulas: readonly (readonly BlockValue[])[];
  readonly numberFormats: readonly (readonly string[])[];
}

/** What is selected, and what lies around it. */
export interface SelectedBlocks {
  /** The selected cells, cut to the part of the sheet that is in use. */
  readonly selected: CellBlock;
  /** The table or the contiguous block around the selection; `selected` itself when it is a range. */
  readonly around: CellBlock;
}

export interface ReadingOptions {
  /** Told before each sheet. */
  readonly onSheet?: (done: number, total: number) => void;
  /** How many rows of each sheet are enough; all when absent. What is hidden is then not asked for. */
  readonly mostRows?: number;
  /** Ends the reading with Cancelled when it is aborted. */
  readonly signal?: AbortSignal | undefined;
}

/**
 * One cell's change, as it was shown to the user. A content that begins with "=" is a formula; any other text
 * stays a text, even "12.5".
 */
export interface SheetEdit {
  readonly sheet: string;
  /** A1. */
  readonly cell: string;
  readonly from: BlockValue;
  readonly to: string | number;
  /** The number format to set with it: a cell formatted as text would take a number for a text. */
  readonly format?: string;
}

export type Contents = readonly (readonly (string | number)[])[];

/** All that the pane's views can ask of the spreadsheet around them. One implementation: excelHost. */
export interface SpreadsheetHost {
  readonly readSelection: () => Promise<SelectedBlocks>;
  /** The cells of an address, as they are now. */
  readonly read: (sheet: string, address: string) => Promise<CellBlock>;
  /** The cells that so many rows and columns would fill from the selection's top left corner. */
  readonly cellsFromSelection: (rowCount: number, columnCount: number) => Promise<CellBlock>;
  /**
   * Writes into `place`, which was read before and shown to the user. Refuses when the cells are no longer
   * as they were shown, and when one is filled, unless told to overwrite.
   */
  readonly insert: (
    place: CellBlock,
    contents: Contents,
    options?: { readonly overwrite?: boolean },
  ) => Promise<"written" | "changed meanwhile" | "filled">;
  /** The cells of an address on every sheet, in the sheets' order, asked for at once. */
  readonly readOnEachSheet: (address: string) => Promise<readonly CellBlock[]>;
  /** The filled part of a sheet; null when it is empty. */
  readonly usedBlock: (sheet: string) => Promise<CellBlock | null>;
  /** Writes a new sheet at the end, under the wished name or that name with a number; answers its name. */
  readonly addSheet: (wishedName: string, contents: Contents) => Promise<string>;
  /**
   * Changes single cells, each read again before and verified after. All cells that were left alone, because
   * they were changed meanwhile or did not take the content, are named; the others are written, as one step
   * to undo. Fails with HalfWritten when a fault came between.
   */
  readonly writeCells: (edits: readonly SheetEdit[]) => Promise<readonly SheetEdit[]>;
  /** Puts a picture (PNG, base64) beside the selection; false where the spreadsheet takes no pictures. */
  readonly insertPicture: (pngBase64: string, name: string) => Promise<boolean>;
  readonly readWorkbook: (options?: ReadingOptions) => Promise<Workbook>;
  readonly goTo: (sheet: string, address: string) => Promise<void>;
  /** Calls back when the selection moves; returns how to stop. */
  readonly onSelectionChanged: (callback: () => void) => Promise<() => void>;
}
