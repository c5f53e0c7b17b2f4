import type { NotebookEntry } from "./entry";

/** How much warmer a freezer is than it is set to. */
export interface FreezerOffset {
  readonly offsetK: number;
  /** Standard uncertainty of that mean; null for a single reading. */
  readonly uncertaintyK: number | null;
  readonly readings: number;
}

/** The mean of measured less set temperature; null without a reading. Its ± is the scatter over the root of their number. */
export function freezerOffset(entries: readonly NotebookEntry[]): FreezerOffset | null {
  const differences = entries.flatMap(({ freezerC, freezerSetC }) =>
    freezerC === null || freezerSetC === null ? [] : [freezerC - freezerSetC],
  );
  const readings = differences.length;
  if (readings === 0) return null;
  const offsetK = differences.reduce((sum, one) => sum + one, 0) / readings;
  const squares = differences.reduce((sum, one) => sum + (one - offsetK) ** 2, 0);
  return {
    offsetK,
    uncertaintyK: readings === 1 ? null : Math.sqrt(squares / (readings - 1) / readings),
    readings,
  };
}
