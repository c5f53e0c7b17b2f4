export type Severity = "error" | "warning" | "note";

/** What a finding does to the answer, in the answer's unit. */
export interface Effect {
  readonly quantity: string;
  readonly from: number | string;
  readonly to: number | string;
  readonly unit: string;
}

/** One cell's change that would mend a finding. A content that begins with "=" is a formula. */
export interface CellEdit {
  readonly sheet: string;
  /** A1. */
  readonly cell: string;
  readonly from: string | number;
  readonly to: string | number;
}

export interface Finding {
  readonly rule: string;
  readonly severity: Severity;
  readonly sheet: string;
  /** A1 or A1:B9. */
  readonly cell: string;
  /** One sentence of evidence. */
  readonly message: string;
  /** Null when the finding does not change an answer: it then ranks last. */
  readonly effect: Effect | null;
  readonly fix?: string;
  /** What `fix` would write, cell by cell, where it can be done without asking anything. */
  readonly edits?: readonly CellEdit[];
}
