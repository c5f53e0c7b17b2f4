import type { CellRange } from "../../workbook/model";
import type { Grid } from "../grid";

/** What the page offers the pane's host adapter and the tests, as window.rimelineBench. */
export interface Bench {
  readonly grid: Grid;
  /** The sentence that explains the error in a cell, or null. */
  readonly messageAt: (sheet: string, row: number, column: number) => string | null;
  /** The value of one cell, e.g. valueAt("Bars", "C5"), once all is calculated. */
  readonly valueAt: (sheet: string, address: string) => Promise<unknown>;
}

declare global {
  interface Window {
    rimelineBench?: Bench;
  }
}

export const oneCell = (row: number, column: number): CellRange => ({
  top: row,
  left: column,
  bottom: row,
  right: column,
});
