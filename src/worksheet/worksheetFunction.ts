import type { SourceKey } from "../foundation/bibliography";
import type { Matrix } from "../foundation/cell";
import type { Card } from "./card";

/** One argument as the user sees it: drives metadata, autocompletion and help. */
export interface Parameter {
  readonly name: string;
  readonly description: string;
  readonly optional: boolean;
  /** What stands for it when it is left out, where that is one value. */
  readonly default?: string | number;
}

/**
 * A function of the sheet, made by `defineFunction` only. Everything else (metadata, registration, bench,
 * help, command line, pane, audit) works from this object.
 */
export interface WorksheetFunction {
  /** Without the namespace: "FREEZINGPOINT". Never changes once released. */
  readonly name: string;
  readonly summary: string;
  readonly parameters: readonly Parameter[];
  /** Unit of the answer, e.g. "°C", "fraction", "table", "text". */
  readonly unit: string;
  readonly sources: readonly SourceKey[];
  readonly example: { readonly formula: string; readonly from: string };
  /** How it is computed and where that holds, in plain text with the equation: for the help page. */
  readonly method?: string;
  /** Names of related functions, without the namespace. */
  readonly seeAlso?: readonly string[];
  /**
   * Answers a call. Arguments as a host hands them over: scalars or rows of cells, null or undefined for
   * an omitted one. Always a rectangular matrix, 1×1 for a scalar; never throws.
   */
  readonly evaluate: (args: readonly unknown[]) => Matrix;
  /**
   * The cards behind an answer, in its shape, null where a cell has none: for hosts that show them in place
   * of the text. Null when the whole call has none; never for numbers.
   */
  readonly cards?: (args: readonly unknown[]) => readonly (readonly (Card | null)[])[] | null;
}
