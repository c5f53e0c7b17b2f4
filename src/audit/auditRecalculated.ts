import type { Workbook } from "../workbook/model";
import type { SheetRange } from "../workbook/precedents";
import type { Recalculation } from "../workbook/recalculation";
import { auditInContext, type AuditOptions } from "./auditWorkbook";
import { cellsToRecalculate } from "./formulas/cellsToRecalculate";
import { auditContext } from "./context";
import type { AuditReport } from "./report/auditReport";

/** Calculates the formulas of some blocks anew, as `recalculate` does. */
export type Recalculate = (
  workbook: Workbook,
  blocks: readonly SheetRange[],
) => Promise<Recalculation>;

const NOTHING: Recalculation = {
  valueAt: () => undefined,
  calculated: [],
  leftAlone: [],
  isComplete: true,
};

/**
 * The audit with its second value: formulas that feed recipes and stated results are calculated anew first.
 * `recalculate` is asked only when there is such a formula, so it may load its engine then.
 */
export async function auditRecalculated(
  workbook: Workbook,
  recalculate: Recalculate,
  options: AuditOptions = {},
): Promise<AuditReport> {
  const context = auditContext(workbook, options.corrections);
  const blocks = cellsToRecalculate(context);
  const recalculated = blocks.length === 0 ? NOTHING : await recalculate(workbook, blocks);
  return auditInContext(context, { ...options, recalculated });
}
