import { ZERO_CELSIUS_K } from "../foundation/constants";
import { outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";

/** One dissolved substance, with its dry glass transition and Gordon–Taylor constant where known. */
export interface GlassFormer {
  readonly grams: number;
  readonly dryTransitionC: number | null;
  readonly gordonTaylor: number | null;
}

/** Glass transition of water. @source roos1993 (−135 °C) */
const WATER_TRANSITION_C = -135;

const MOST_WITHOUT_FIGURE = 0.2;

/**
 * Glass transition of an unfrozen mix, °C: the dry substances by Fox (1/Tg = Σ share/Tg, in kelvin), their
 * Gordon–Taylor constants averaged by mass, then Gordon–Taylor with water. Good to ± 5 °C for sugars.
 * @source gordonTaylor1952; fox1956
 */
export function glassTransitionC(
  formers: readonly GlassFormer[],
  waterGrams: number,
): Result<number> {
  let total = 0;
  let known = 0;
  let inverseSum = 0;
  let constantSum = 0;
  for (const { grams, dryTransitionC, gordonTaylor } of formers) {
    total += grams;
    if (dryTransitionC === null || gordonTaylor === null) continue;
    known += grams;
    inverseSum += grams / (dryTransitionC + ZERO_CELSIUS_K);
    constantSum += grams * gordonTaylor;
  }
  if (!(total > 0)) return outsideValidity("Nothing is dissolved, so no glass can form.");
  if (known < (1 - MOST_WITHOUT_FIGURE) * total) {
    const percent = Math.round((100 * (total - known)) / total);
    return outsideValidity(
      `${percent} % of what is dissolved has no known glass transition; at most ${100 * MOST_WITHOUT_FIGURE} % may lack one.`,
    );
  }
  const dryC = known / inverseSum - ZERO_CELSIUS_K;
  const pull = (constantSum / known) * waterGrams;
  return (total * dryC + pull * WATER_TRANSITION_C) / (total + pull);
}
