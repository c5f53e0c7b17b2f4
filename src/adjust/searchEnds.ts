import { isProblem } from "../foundation/problem";
import { maxFreezeTemperatureC } from "../recipe/solution";
import { endsWithin, type EndsBetween } from "./endOfFreezing";
import { mixWith } from "./outcomes";
import { aimValue, type Aim } from "./programme";
import type { AdjustLine } from "./readQuestion";
import type { LinearForm } from "./wishForm";

type Attempt = (ends: EndsBetween, more: readonly LinearForm[]) => readonly number[] | null;

const MOST_PROGRAMMES = 240;
const NARROWEST_K = 1e-7;

/**
 * The best mix among those whose freezing ends between two temperatures. Where Tm′ is known the wishes are
 * linear; between two temperatures a programme that asks for less tells whether, and how well, they can be
 * met at all. So the span is halved, halves that cannot do better are dropped, and in each the Tm′ that came
 * out is tried exactly (branch and bound in one dimension).
 */
export function searchEnds(
  lines: readonly AdjustLine[],
  span: EndsBetween,
  aim: Aim,
  attempt: Attempt,
  isRight: (grams: readonly number[]) => boolean,
): readonly number[] | null {
  let best: readonly number[] | null = null;
  let left = MOST_PROGRAMMES;
  const isBetter = (grams: readonly number[]) =>
    best === null || aimValue(lines, aim, grams) < aimValue(lines, aim, best) - 1e-9;
  const take = (grams: readonly number[] | null) => {
    if (grams !== null && isRight(grams) && isBetter(grams)) best = grams;
  };
  const exactAt = (temperatureC: number) => {
    const ends = { coldestC: temperatureC, warmestC: temperatureC };
    return attempt(ends, endsWithin(lines, ends));
  };
  const open: EndsBetween[] = [span];
  for (let part = open.shift(); part !== undefined && left > 0; part = open.shift()) {
    left -= 2;
    const bound = attempt(part, endsWithin(lines, part));
    if (bound === null || !isBetter(bound)) continue;
    take(bound);
    const mix = mixWith(lines, bound);
    const endC = isProblem(mix) ? null : maxFreezeTemperatureC(mix);
    if (endC !== null) take(exactAt(endC));
    if (part.warmestC - part.coldestC <= NARROWEST_K) continue;
    const middleC = (part.coldestC + part.warmestC) / 2;
    open.push({ ...part, warmestC: middleC }, { ...part, coldestC: middleC });
  }
  return best;
}
