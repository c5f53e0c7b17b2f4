import { waterActivity } from "../engine/waterActivity";
import { isProblem, outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { gramsOfSubstance } from "./amounts";
import type { Mix } from "./mix";
import { ofArgument } from "./ofArgument";
import { solutionOf } from "./solution";

/** Above this share of ethanol in water and ethanol, the curve at its freezing point says too little of 25 °C. */
const MOST_ETHANOL_FRACTION = 0.2;

/** Refusal for a mix whose alcohol is too much for what is asked, or null. */
export function tooMuchAlcohol(mix: Mix, mostFraction: number, asked: string) {
  const ethanol = gramsOfSubstance(mix, "ethanol");
  const fraction = ethanol / (ethanol + mix.waterGrams);
  if (!(fraction > mostFraction)) return null;
  return outsideValidity(
    `grams: ${(100 * fraction).toFixed(0)} % of the water and alcohol is alcohol; ${asked} is answered up to ${100 * mostFraction} %.`,
  );
}

/** Water activity of the liquid mix as written, no ice, 0 to 1. @param temperatureC 0 to 100 °C */
export function waterActivityOfMix(mix: Mix, temperatureC: number): Result<number> {
  const solution = solutionOf(mix);
  if (isProblem(solution)) return solution;
  if (temperatureC < 0 || temperatureC > 100) {
    return outsideValidity(
      `temperature: the water activity at ${temperatureC} °C is not answered; the checked range is 0 to 100 °C.`,
    );
  }
  const refusal = tooMuchAlcohol(mix, MOST_ETHANOL_FRACTION, "the water activity");
  if (refusal !== null) return refusal;
  const activity = waterActivity(solution, temperatureC);
  return isProblem(activity) ? ofArgument("grams", activity) : activity;
}
