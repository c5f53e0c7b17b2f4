import type { Workbook } from "../workbook/model";
import { findingsOf, reportOf, rulesFor, type AuditOptions } from "./auditWorkbook";
import { auditContext } from "./context";
import type { Finding } from "./finding";
import type { AuditReport } from "./report/auditReport";

/** How many steps of the audit are done. */
export interface AuditProgress {
  readonly done: number;
  readonly total: number;
}

/**
 * The audit rule by rule: whoever drives it may let others work between two steps, or stop. The report is the
 * one that auditWorkbook gives.
 */
export function* auditInSteps(
  workbook: Workbook,
  options: AuditOptions = {},
): Generator<AuditProgress, AuditReport, undefined> {
  const asked = rulesFor(options);
  const total = asked.length + 1; // finding the recipes comes first
  const recalculated = options.recalculated ?? null;
  const context = { ...auditContext(workbook, options.corrections), recalculated };
  const found: Finding[] = [];
  for (const [done, rule] of asked.entries()) {
    yield { done: done + 1, total };
    found.push(...findingsOf(rule, context));
  }
  return reportOf(context, found, options);
}
