import type { Workbook, WorkbookSheet, WorkbookValue } from "../../src/workbook/model";
import type { Rows } from "./bookOf";

/** A workbook that a rule must flag, or must not. */
export interface RuleCase {
  readonly rule: string;
  readonly what: string;
  readonly rows: Rows | Readonly<Record<string, Rows>>;
  /** Cells that are flagged; [] for a false example. */
  readonly cells: readonly string[];
  readonly extras?: Partial<WorkbookSheet>;
  readonly workbook?: Partial<Workbook>;
  /** What the first sheet's formulas give when calculated anew, by cell. */
  readonly fresh?: Readonly<Record<string, WorkbookValue>>;
}
