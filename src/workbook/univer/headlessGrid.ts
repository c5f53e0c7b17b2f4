import type { Workbook } from "../model";
import { evaluateFormula } from "./evaluateFormula";
import type { GridAnswer } from "./gridAnswer";
import type { GridFunction } from "./gridFunction";
import type { KeepFormula } from "./gridSnapshot";
import { openEngine } from "./openEngine";
import { recalculateEngine, type GridValueAt } from "./recalculateEngine";

/** A workbook in the grid's formula engine, without a screen. */
export interface HeadlessGrid {
  /**
   * What a formula ("=…") answers on the workbook's first sheet, numbers in full double precision; null
   * when it is no formula that can be read.
   */
  readonly evaluate: (formula: string) => Promise<{ readonly value: GridAnswer } | null>;
  /** Calculates the formulas that were kept when the workbook was loaded. */
  readonly recalculate: () => Promise<GridValueAt>;
  readonly knowsFunction: (name: string) => boolean;
  readonly close: () => void;
}

/** Formulas are taken at their stored value, unless `keep` says that they are to be calculated. */
export function openHeadlessGrid(
  workbook: Workbook,
  functions: readonly GridFunction[],
  keep: KeepFormula = () => false,
): HeadlessGrid {
  const engine = openEngine(workbook, functions, keep);
  return {
    evaluate: (formula) => evaluateFormula(engine, formula),
    recalculate: () => recalculateEngine(engine),
    knowsFunction: (name) => engine.knowsFunction(name),
    close: engine.close,
  };
}
