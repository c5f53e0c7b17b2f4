import type { FormulaCell } from "./formulaIndex";
import type { WorkbookValue } from "./model";

/** A formula that keeps its stored value, and why. */
export interface LeftAlone {
  readonly cell: FormulaCell;
  readonly reason: string;
}

/** What the grid's engine made of a workbook's formulas. */
export interface Recalculation {
  /** The fresh value of a cell (sheet, row and column from zero); undefined when it was not calculated. */
  readonly valueAt: (sheet: number, row: number, column: number) => WorkbookValue | undefined;
  readonly calculated: readonly FormulaCell[];
  readonly leftAlone: readonly LeftAlone[];
  /** False when more formulas feed the cells than are calculated. */
  readonly isComplete: boolean;
}
