import type { Finding } from "../finding";
import type { RecipeCorrection } from "../recipes/corrections/recipeCorrection";

/** A finding with the key by which it can be accepted. */
export interface ReportedFinding extends Finding {
  /** Rule, sheet, cell and a hash of what the cell holds: it changes when the cell does. */
  readonly key: string;
}

/** A recipe block as the report tells of it. */
export interface ReportedRecipes {
  readonly sheet: string;
  /** A1:B9, from the headers to the last name. */
  readonly range: string;
  readonly recipes: number;
  /** What was taken for what, in one sentence. */
  readonly taken: string;
  /** True when the user said how it lies. */
  readonly isCorrected: boolean;
  /** What would have to be said for it to be read like this: to be changed and said. */
  readonly correction: RecipeCorrection;
}

/** How far the workbook's formulas were calculated anew. */
export interface RecalculationSummary {
  readonly calculated: number;
  readonly leftAlone: number;
  /** True when every formula that feeds a recipe or a stated result was calculated, be it by the open spreadsheet. */
  readonly complete: boolean;
  /** Why not, in sentences; null when complete. */
  readonly reason: string | null;
}

export interface AuditSummary {
  readonly sheets: number;
  readonly recipes: number;
  readonly errors: number;
  readonly warnings: number;
  readonly notes: number;
  readonly accepted: number;
  readonly recalculation: RecalculationSummary;
}

/** A user's word that a finding may stay, and why. */
export interface Acceptance {
  /** The finding's key. */
  readonly finding: string;
  readonly reason: string;
}

export interface AcceptedFinding {
  readonly finding: ReportedFinding;
  readonly reason: string;
}

/** An acceptance that no longer fits. */
export interface StaleAcceptance extends Acceptance {
  /** Why it does not count, in one sentence. */
  readonly why: string;
}

export interface AuditReport {
  /** Those with an effect first, then by severity and the size of the effect; accepted ones left out. */
  readonly findings: readonly ReportedFinding[];
  readonly accepted: readonly AcceptedFinding[];
  readonly staleAcceptances: readonly StaleAcceptance[];
  readonly recipes: readonly ReportedRecipes[];
  /** What was assumed on reading the file, and what of the user's corrections was not followed, in sentences. */
  readonly reading: readonly string[];
  readonly summary: AuditSummary;
}
