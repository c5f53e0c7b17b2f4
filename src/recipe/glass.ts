import { glassTransitionC } from "../engine/glassTransition";
import { isProblem, outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Mix } from "./mix";
import { ofArgument } from "./ofArgument";

/** Glass transition of the unfrozen mix as written, °C. */
export function glassTransitionOfMix({ doses, waterGrams }: Mix): Result<number> {
  if (doses.length === 0) {
    return outsideValidity(
      "grams: nothing is dissolved in this mix, so no glass can form; something that dissolves is expected.",
    );
  }
  const found = glassTransitionC(
    doses.map(({ grams, substance }) => ({
      grams,
      dryTransitionC: substance.glassTransitionDryC,
      gordonTaylor: substance.gordonTaylor,
    })),
    waterGrams,
  );
  return isProblem(found) ? ofArgument("grams", found) : found;
}
