import type { HowObtained } from "../../src/foundation/figure";

/** One fact of an entry as it is listed: the number, and why it may be believed. */
export interface FigureLine {
  readonly label: string;
  readonly value: number | string;
  readonly unit: string;
  /** One standard uncertainty, in the value's unit; null for what is no measurement. */
  readonly uncertainty: number | null;
  readonly source: string;
  readonly obtained: HowObtained | null;
  readonly basis: string;
  /** The function and the arguments that give this value in a cell; null when none does. */
  readonly call: { readonly name: string; readonly args: readonly string[] } | null;
}
