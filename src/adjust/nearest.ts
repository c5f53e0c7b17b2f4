import { isProblem } from "../foundation/problem";
import { maxFreezeTemperatureC } from "../recipe/solution";
import type { AdjustWish } from "./adjustment";
import { mixWith } from "./outcomes";
import type { AdjustLine } from "./readQuestion";
import { solveWishes } from "./solveWishes";
import { atLeast, negated, wishValue } from "./wishForm";

const MOST_ROUNDS = 30;

function valueAt(lines: readonly AdjustLine[], wish: AdjustWish, grams: readonly number[]) {
  const mix = mixWith(lines, grams);
  const value = isProblem(mix) ? mix : wishValue(lines, wish, mix, grams);
  if (isProblem(mix) || isProblem(value)) return null;
  return { value, lowestC: maxFreezeTemperatureC(mix) ?? -Infinity };
}

/**
 * The highest (or lowest) value of a wish's quantity among the mixes that meet the other wishes. Each round
 * asks for the mix that goes furthest beyond the value of the last one; Dinkelbach's method for a ratio,
 * which gains digits twofold every round. Null when the others cannot be met or the quantity has no value.
 */
export function extremeValue(
  lines: readonly AdjustLine[],
  wish: AdjustWish,
  others: readonly AdjustWish[],
  towards: "higher" | "lower",
): number | null {
  let grams = solveWishes(lines, others);
  let best: number | null = null;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    if (grams === null || isProblem(grams)) return best;
    const found = valueAt(lines, wish, grams);
    if (found === null) return best;
    const gain = best === null ? Infinity : Math.abs(found.value - best);
    const isBetter =
      best === null || (towards === "higher" ? found.value > best : found.value < best);
    if (isBetter) best = found.value;
    if (!isBetter || gain <= 1e-9 * Math.max(Math.abs(found.value), 1e-6)) return best;
    const beyond = atLeast(lines, wish, found.value, found.lowestC);
    grams = solveWishes(lines, others, towards === "higher" ? negated(beyond) : beyond);
  }
  return best;
}
