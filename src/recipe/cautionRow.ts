import { bibliography, type SourceKey } from "../foundation/bibliography";

/** One thing to tell: what, because of what, on whose word. */
export interface CautionRow {
  readonly text: string;
  readonly because: string;
  readonly source: string;
}

/** Sources in full. */
export const sourceText = (keys: readonly SourceKey[]): string =>
  keys.map((key) => bibliography[key]).join("; ");
