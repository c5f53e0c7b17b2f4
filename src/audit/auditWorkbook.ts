import { rangeName } from "../workbook/address";
import type { Workbook } from "../workbook/model";
import { condense } from "./condense";
import { auditContext } from "./context";
import { effectSize } from "./effect";
import type { Finding, Severity } from "./finding";
import { describeBlock } from "./recipes/describeBlock";
import type { RecipeBlock } from "./recipes/recipeBlock";
import { rules } from "./rules";

/** A recipe block as the report tells of it. */
export interface ReportedRecipes {
  readonly sheet: string;
  /** A1:B9, from the headers to the last name. */
  readonly range: string;
  readonly recipes: number;
  /** What was taken for what, in one sentence. */
  readonly taken: string;
}

export interface AuditSummary {
  readonly sheets: number;
  readonly recipes: number;
  readonly errors: number;
  readonly warnings: number;
  readonly notes: number;
}

export interface AuditReport {
  /** By severity, then by the size of the effect; those without an effect last. */
  readonly findings: readonly Finding[];
  readonly recipes: readonly ReportedRecipes[];
  readonly summary: AuditSummary;
}

export interface AuditOptions {
  /** Rules by id that are left out. */
  readonly without?: readonly string[];
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
});

/**
 * Reads a workbook for what is wrong in its recipes. Every number in a finding comes from the worksheet
 * functions. Nothing is written.
 */
export function auditWorkbook(workbook: Workbook, options: AuditOptions = {}): AuditReport {
  const context = auditContext(workbook);
  const all = rules
    .filter(({ id }) => options.without?.includes(id) !== true)
    .flatMap((rule) => rule.find(context))
    .sort(compare);
  const findings = condense(all).sort(compare);
  const count = (wanted: Severity) => findings.filter(({ severity }) => severity === wanted).length;
  const summary = {
    sheets: workbook.sheets.length,
    recipes: context.blocks.reduce((sum, { recipes }) => sum + recipes.length, 0),
    errors: count("error"),
    warnings: count("warning"),
    notes: count("note"),
  };
  return { findings, recipes: context.blocks.map(reported), summary };
}
