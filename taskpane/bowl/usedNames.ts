import { isTotalName } from "./recipeRows";
import type { RecognisedRecipe } from "./recognised";

/** Names that are in the recipe with an amount. */
export const usedNames = ({ lines }: RecognisedRecipe): readonly string[] => [
  ...new Set(
    lines.flatMap(({ name, amount }) =>
      typeof name === "string" && name !== "" && amount !== "" && amount !== 0 && !isTotalName(name)
        ? [name]
        : [],
    ),
  ),
];
