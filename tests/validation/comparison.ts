import { largest, rootMeanSquare } from "../../src/catalogue/fit/residuals";

/** One printed figure beside what is computed for it. */
export interface ComparedFigure {
  /** What it is a figure of: "sucrose, 12 %". */
  readonly label: string;
  /** The substance or mixture it belongs to, for sums by it. */
  readonly group: string;
  readonly printed: number;
  readonly computed: number;
  /** What the ideal law makes of it; null where there is none to compare. */
  readonly ideal: number | null;
  /** One standard uncertainty that we state for it; null where none is stated. */
  readonly band: number | null;
}

/** The figures of one source, used in the fits or kept back from them. */
export interface Comparison {
  readonly id: string;
  /** What is compared, in a few words. */
  readonly title: string;
  /** The source as the bibliography has it. */
  readonly source: string;
  readonly use: "fit" | "held out";
  readonly unit: "°C" | "a_w" | "K";
  readonly figures: readonly ComparedFigure[];
}

export interface Misses {
  readonly rms: number;
  readonly largest: number;
}

const missesOf = (misses: readonly number[]): Misses => ({
  rms: rootMeanSquare(misses),
  largest: largest(misses),
});

/** How far our figures lie from print. */
export const ourMisses = (figures: readonly ComparedFigure[]): Misses =>
  missesOf(figures.map(({ computed, printed }) => computed - printed));

/** How far the ideal law lies from print; null where it is not compared. */
export function idealMisses(figures: readonly ComparedFigure[]): Misses | null {
  const misses = figures.flatMap(({ ideal, printed }) => (ideal === null ? [] : [ideal - printed]));
  return misses.length === 0 ? null : missesOf(misses);
}
