import { askMix, type RecipeMix } from "./askMix";
import { recipeTrouble } from "./recipeTrouble";

/** The sentence that explains why nothing can be said of a recipe, when that is so. */
export const recipeTroubleOf = (mix: RecipeMix): string | null =>
  recipeTrouble(
    askMix(mix, "COMPONENT", "water")[0]?.[0] ?? null,
    askMix(mix, "FREEZINGPOINT")[0]?.[0] ?? null,
  );
