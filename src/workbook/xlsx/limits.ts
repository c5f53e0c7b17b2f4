import { badInput, type Problem } from "../../foundation/problem";

/** What the reader accepts, so that a hostile or broken file ends in a sentence and not in a hang. */
export const LIMITS = {
  fileBytes: 50_000_000,
  inflatedBytes: 200_000_000,
  entries: 5_000,
  /** Honest sheets stay under about 100 : 1; the format itself reaches 1032 : 1. */
  ratio: 400,
  /** A small part may be all blanks: the ratio counts beyond this size only. */
  ratioFromBytes: 10_000_000,
  xmlDepth: 64,
  cells: 2_500_000,
  /** Different texts and formulas: they weigh some hundred bytes each. */
  texts: 1_500_000,
  sheets: 500,
  /** Ranges are kept one by one: merged blocks, columns' widths, tables, names. */
  ranges: 100_000,
  /** As long as the longest text a cell may hold, with room for markup. */
  textLength: 1_000_000,
} as const;

export const megabytes = (bytes: number): string => `${Math.round(bytes / 1e5) / 10} MB`;

/** Why a file of this size is not read; null when it is. */
export const fileSizeProblem = (bytes: number): Problem | null =>
  bytes <= LIMITS.fileBytes
    ? null
    : badInput(
        `The file is ${megabytes(bytes)} large; at most ${megabytes(LIMITS.fileBytes)} are read.`,
      );
