import type { Difference } from "../../corpus/bookDifferences";

/** What comparing a set of files came to. */
export interface Tally {
  files: number;
  /** Files that were refused, with the sentence. */
  readonly unread: string[];
  cells: number;
  readonly differences: Difference[];
}

export const newTally = (): Tally => ({ files: 0, unread: [], cells: 0, differences: [] });

/** Adds differences, each with the book it is in. */
export function addTo(tally: Tally, title: string, differences: readonly Difference[]): void {
  tally.differences.push(
    ...differences.map(({ kind, line }) => ({ kind, line: `${title}: ${line}` })),
  );
}
