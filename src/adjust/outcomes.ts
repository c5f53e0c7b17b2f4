import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Mix } from "../recipe/mix";
import { mixOf } from "../recipe/mixOf";
import type { AdjustWish, WishOutcome } from "./adjustment";
import type { AdjustLine } from "./readQuestion";
import { wishValue } from "./wishForm";

/** A wish counts as met when it is missed by no more than this share of its value, or of a hundredth. */
const MET_WITHIN = 1e-6;
const LEAST_VALUE = 0.01;

/** The recipe with other amounts. */
export const mixWith = (lines: readonly AdjustLine[], grams: readonly number[]): Result<Mix> =>
  mixOf(lines.map(({ item }, at) => ({ item, grams: grams[at] ?? 0 })));

function missOf({ from, to }: AdjustWish, value: number): number {
  const miss = Math.max((from ?? value) - value, value - (to ?? value), 0);
  return miss <= MET_WITHIN * Math.max(Math.abs(from ?? 0), Math.abs(to ?? 0), LEAST_VALUE)
    ? 0
    : miss;
}

/** Every wish recomputed from the mix itself, not from the linear form. */
export function outcomesOf(
  lines: readonly AdjustLine[],
  wishes: readonly AdjustWish[],
  grams: readonly number[],
): Result<readonly WishOutcome[]> {
  const mix = mixWith(lines, grams);
  if (isProblem(mix)) return mix;
  const outcomes: WishOutcome[] = [];
  for (const wish of wishes) {
    const value = wishValue(lines, wish, mix, grams);
    if (isProblem(value)) return value;
    outcomes.push({ value, miss: missOf(wish, value) });
  }
  return outcomes;
}

export const allMet = (outcomes: Result<readonly WishOutcome[]>): boolean =>
  !isProblem(outcomes) && outcomes.every(({ miss }) => miss === 0);
