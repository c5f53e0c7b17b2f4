import { bibliography, type SourceKey } from "../foundation/bibliography";

/** One line on the board. `numbers` is the sum as one would type it; it gives `result` to the digits shown. */
export interface WorkingLine {
  readonly step: string;
  readonly formula: string;
  readonly numbers: string;
  readonly result: number | string;
  readonly unit: string;
  readonly source: string;
}

/** A number with the digits that a board can hold, and that still recompute. */
export const shown = (value: number): string => String(Number(value.toPrecision(7)));

/** What a board's reader gets who subtracts the digits shown: small differences keep no more than those. */
export const shownDifference = (value: number, less: number): number =>
  Number(shown(value)) - Number(shown(less));

/** Writes a line. */
export const line = (
  step: string,
  formula: string,
  numbers: string,
  result: number | string,
  unit: string,
  source: SourceKey,
): WorkingLine => ({ step, formula, numbers, result, unit, source: bibliography[source] });

/** A sum of several numbers, as typed. */
export const plus = (values: readonly number[]): string => values.map(shown).join(" + ");
