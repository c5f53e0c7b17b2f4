import { largest, rootMeanSquare } from "../../../src/catalogue/fit/residuals";
import type { ComparedFigure } from "./comparison";

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

/**
 * How many of the figures with a stated uncertainty lie within once and twice of it. The print's own is added
 * in square, as laboratories are compared.
 * @source ISO 13528:2022, 9.6 (zeta scores)
 */
export function withinStated(figures: readonly ComparedFigure[]) {
  const shares = figures.flatMap(({ computed, printed, band, printedBand }) =>
    band === null ? [] : [Math.abs(computed - printed) / Math.hypot(band, printedBand)],
  );
  const within = (times: number) => shares.filter((share) => share <= times).length;
  return { stated: shares.length, once: within(1), twice: within(2) };
}

/** The figures of each substance or mixture, in the order of their first. */
export function byGroup(
  figures: readonly ComparedFigure[],
): ReadonlyMap<string, readonly ComparedFigure[]> {
  const groups = new Map<string, ComparedFigure[]>();
  for (const figure of figures) {
    groups.set(figure.group, [...(groups.get(figure.group) ?? []), figure]);
  }
  return groups;
}
