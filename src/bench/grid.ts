import type { CellRange, DefinedName, WorkbookTable } from "../workbook/model";
import type { BookValue } from "./book";

/** A cell's content on its way in: a constant, "=FORMULA(…)", "" to clear it, null to leave it alone. */
export type GridInput = number | string | boolean | null;

/** A block of cells on its way out, row by row; each of the four is read from the grid when it is asked for. */
export interface GridBlock {
  readonly values: readonly (readonly BookValue[])[];
  /** With "=", functions of ours as RIME.…; "" for a cell without a formula. */
  readonly formulas: readonly (readonly string[])[];
  readonly formats: readonly (readonly string[])[];
  /** As the cell shows it. */
  readonly texts: readonly (readonly string[])[];
}

export interface GridSheet {
  readonly name: string;
  readonly hidden: boolean;
  readonly rowCount: number;
  readonly columnCount: number;
}

/** The open spreadsheet, whatever draws it: all that the host adapter and the page's own parts need of it. */
export interface Grid {
  readonly sheets: () => readonly GridSheet[];
  readonly activeSheet: () => string;
  readonly activate: (sheet: string) => void;
  readonly addSheet: (name: string | null) => string;
  readonly usedRange: (sheet: string) => CellRange | null;
  readonly read: (sheet: string, range: CellRange) => GridBlock;
  readonly write: (
    sheet: string,
    range: CellRange,
    inputs: readonly (readonly GridInput[])[],
  ) => void;
  readonly setFormats: (
    sheet: string,
    range: CellRange,
    formats: readonly (readonly string[])[],
  ) => void;
  readonly selection: () => { readonly sheet: string; readonly range: CellRange };
  readonly select: (sheet: string, range: CellRange) => void;
  readonly isRowHidden: (sheet: string, row: number) => boolean;
  readonly isColumnHidden: (sheet: string, column: number) => boolean;
  /** The blocks that formulas fill beyond their own cell, by "row,column" of the formula. */
  readonly spills: (sheet: string) => ReadonlyMap<string, CellRange>;
  readonly merged: (sheet: string) => readonly CellRange[];
  readonly tables: () => readonly (WorkbookTable & { readonly sheet: string })[];
  readonly names: () => readonly DefinedName[];
  /** Calls back when the selection moves; returns how to stop. */
  readonly onSelectionChanged: (callback: () => void) => () => void;
  /** Has all that `work` writes undone and redone as one step. */
  readonly asOneStep: (work: () => void) => void;
  /** Resolves when what was written has been calculated. */
  readonly settled: () => Promise<void>;
}
