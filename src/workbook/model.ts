/** What a cell of a workbook holds. An error is kept by its sheet text, e.g. "#VALUE!". */
export type WorkbookValue = number | string | boolean | null | { readonly error: string };

export interface WorkbookCell {
  /** The value as stored: for a formula, the cached result. */
  readonly value: WorkbookValue;
  /** The formula without "=", add-in prefixes already mapped to RIME.…; absent for a constant. */
  readonly formula?: string;
  /** The formula as the user wrote it, where names and table columns in `formula` were replaced by addresses. */
  readonly written?: string;
  /** For one of many cells that share a formula: its text in the first of them, known without work. */
  readonly sharedFormula?: string;
  /** The number format as written in the file, e.g. "0.0 %"; absent when General. */
  readonly format?: string;
  /** For a formula that fills more than its own cell: the block it fills, as last calculated. */
  readonly spills?: CellRange;
}

/** Zero-based, inclusive. */
export interface CellRange {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export interface WorkbookTable {
  readonly name: string;
  readonly range: CellRange;
  readonly columns: readonly string[];
  readonly hasTotals: boolean;
}

export type CellVisitor = (row: number, column: number, cell: WorkbookCell) => void;

export interface WorkbookSheet {
  readonly name: string;
  readonly hidden: boolean;
  readonly rowCount: number;
  readonly columnCount: number;
  /** The cell at a zero-based place, or undefined when it is blank. */
  readonly cellAt: (row: number, column: number) => WorkbookCell | undefined;
  /** A formula by address as the user would write it in a cell, with names and table columns. */
  readonly asWritten?: (formula: string, row: number, column: number) => string;
  /** Visits every cell that is not blank, row by row; `eachCell` falls back to cellAt without it. */
  readonly visitCells?: (visit: CellVisitor) => void;
  /** The same for cells with a formula only; `eachFormula` falls back to every cell without it. */
  readonly visitFormulas?: (visit: CellVisitor) => void;
  readonly tables: readonly WorkbookTable[];
  readonly merged: readonly CellRange[];
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenColumns: ReadonlySet<number>;
  /** Blocks of which a filter hides rows; absent where the source does not tell. */
  readonly filtered?: readonly CellRange[];
}

export interface DefinedName {
  readonly name: string;
  /** What it refers to, as written, without "=". */
  readonly refersTo: string;
  /** The sheet it is local to, or null for the whole workbook. */
  readonly sheet: string | null;
}

/** A workbook as the audit, the command line and the bench read it, whatever it came from. */
export interface Workbook {
  readonly sheets: readonly WorkbookSheet[];
  readonly names: readonly DefinedName[];
  readonly calculation: "automatic" | "manual" | "automatic except tables";
  readonly externalLinks: readonly string[];
  /** True for a workbook whose day numbers count from 1904 (ECMA-376 18.2.28). */
  readonly datesFrom1904?: true;
}
