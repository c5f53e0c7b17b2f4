import { rangeName } from "../workbook/address";
import type { Workbook } from "../workbook/model";
import type { Recalculation } from "../workbook/recalculation";
import { condense } from "./condense";
import { auditContext, type AuditContext } from "./context";
import { effectSize } from "./effect";
import type { Finding, Severity } from "./finding";
import { correctionOf } from "./recipes/corrections/correctionOf";
import type { RecipeCorrection } from "./recipes/corrections/recipeCorrection";
import { describeBlock } from "./recipes/describeBlock";
import type { RecipeBlock } from "./recipes/recipeBlock";
import type { AuditReport, ReportedRecipes } from "./report/auditReport";
import { findingKey } from "./report/findingKey";
import { recalculationSummary } from "./report/recalculationSummary";
import type { Rule } from "./rule";
import { rules } from "./rules";
import { saidOnce } from "./saidOnce";
import { withoutConsequences } from "./withoutConsequences";

export type { AuditReport, AuditSummary, ReportedRecipes } from "./report/auditReport";

export interface AuditOptions {
  /** Rules by id that are left out. */
  readonly without?: readonly string[];
  /** The second value of the formulas, where they were calculated anew. */
  readonly recalculated?: Recalculation;
  /** True for a workbook that is open in a spreadsheet: its values are what its formulas give. */
  readonly isLive?: boolean;
  /** What the user says of recipes; when absent, what the workbook keeps of that. */
  readonly corrections?: readonly RecipeCorrection[];
}

const RANK: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

function compare(one: Finding, other: Finding): number {
  const byEffect = Number(one.effect === null) - Number(other.effect === null);
  if (byEffect !== 0) return byEffect;
  return (
    RANK[one.severity] - RANK[other.severity] || effectSize(other.effect) - effectSize(one.effect)
  );
}

const reported = (block: RecipeBlock): ReportedRecipes => ({
  sheet: block.sheet.name,
  range: rangeName(block.range),
  recipes: block.recipes.length,
  taken: describeBlock(block),
  isCorrected: block.stated === true,
  correction: correctionOf(block),
});

/** The rules that are asked, in their order. */
export const rulesFor = ({ without }: AuditOptions) =>
  rules.filter(({ id }) => without?.includes(id) !== true);

/** Sorts, sums up and counts what the rules found. */
export function reportOf(
  { workbook, blocks, notes }: AuditContext,
  found: readonly Finding[],
  options: AuditOptions,
): AuditReport {
  const sheets = new Map(workbook.sheets.map((sheet) => [sheet.name, sheet]));
  const findings = condense([...withoutConsequences(workbook, found)].sort(compare))
    .sort(compare)
    .map((finding) => ({ ...finding, key: findingKey(sheets.get(finding.sheet), finding) }));
  const count = (wanted: Severity) => findings.filter(({ severity }) => severity === wanted).length;
  const summary = {
    sheets: workbook.sheets.length,
    recipes: blocks.reduce((sum, { recipes }) => sum + recipes.length, 0),
    errors: count("error"),
    warnings: count("warning"),
    notes: count("note"),
    accepted: 0,
    recalculation: recalculationSummary(options, workbook),
  };
  return {
    findings,
    accepted: [],
    staleAcceptances: [],
    recipes: blocks.map(reported),
    reading: notes,
    summary,
  };
}

/** What one rule finds, the worst first, a column that is wrong throughout summed up. */
export const findingsOf = (rule: Rule, context: AuditContext): Finding[] =>
  condense(saidOnce(rule.find(context)).sort(compare));

/** The audit of a workbook that has been read already. */
export function auditInContext(read: AuditContext, options: AuditOptions = {}): AuditReport {
  const recalculated = options.recalculated ?? null;
  // One object for all rules: some keep by it what they have worked out.
  const context = { ...read, recalculated };
  // Summed up rule by rule, so that a hundred thousand findings of each are not held at once.
  const found = rulesFor(options).flatMap((rule) => findingsOf(rule, context));
  return reportOf(context, found, options);
}

/**
 * Reads a workbook for what is wrong in its recipes. Every number in a finding comes from the worksheet
 * functions. Nothing is written.
 */
export const auditWorkbook = (workbook: Workbook, options: AuditOptions = {}): AuditReport =>
  auditInContext(auditContext(workbook, options.corrections), options);
