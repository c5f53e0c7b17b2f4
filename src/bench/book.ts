import type { CellRange, DefinedName, WorkbookTable } from "../workbook/model";

/** How a cell is drawn. Colours as "#rrggbb"; absent means the grid's own. */
export interface CellLook {
  /** As written in a file, e.g. "0.0 %"; absent when General. */
  readonly numberFormat?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly fontSizePt?: number;
  readonly colour?: string;
  readonly fill?: string;
  readonly align?: "left" | "center" | "right";
  readonly wrap?: boolean;
}

/** An error value by its sheet text, e.g. "#N/A". */
export interface ErrorValue {
  readonly error: string;
}

export type BookValue = number | string | boolean | null | ErrorValue;

export interface BookCell {
  /** The constant, or what the formula last gave. */
  readonly value: BookValue;
  /** Without "=", functions of ours as RIME.…; absent for a constant. */
  readonly formula?: string;
  /** For a formula that fills more than its own cell: the block it fills. */
  readonly spills?: CellRange;
  readonly look?: CellLook;
}

export interface BookSheet {
  readonly name: string;
  readonly hidden: boolean;
  /** Rows of cells from A1; undefined where there is nothing. Rows may be of different length. */
  readonly rows: readonly (readonly (BookCell | undefined)[])[];
  /** By zero-based column, in pixels at 96 dots per inch; absent means the usual width. */
  readonly columnWidthsPx: ReadonlyMap<number, number>;
  readonly rowHeightsPx: ReadonlyMap<number, number>;
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenColumns: ReadonlySet<number>;
  readonly merged: readonly CellRange[];
  readonly tables: readonly WorkbookTable[];
  readonly frozenRows: number;
  readonly frozenColumns: number;
}

/** A workbook on its way between a file, the demo and the grid: what the bench can carry of one. */
export interface Book {
  readonly name: string;
  readonly sheets: readonly BookSheet[];
  readonly names: readonly DefinedName[];
}

/** A book from a file, and sentences about what of the file is not in it. */
export interface OpenedBook {
  readonly book: Book;
  readonly notes: readonly string[];
}

export const isErrorValue = (value: unknown): value is ErrorValue =>
  typeof value === "object" && value !== null && "error" in value;
