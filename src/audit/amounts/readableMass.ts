import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Effect } from "../finding";
import type { Recipe, RecipeBlock } from "../recipes/recipeBlock";

/** How much of a recipe can be read where one of its amounts is an error. */
export function readableMass({ mixOf }: AuditContext, block: RecipeBlock, recipe: Recipe): Effect {
  const rest = mixOf(block, recipe).grams.reduce((sum, grams) => sum + grams, 0);
  return {
    quantity: "mass that can be read",
    from: rounded(rest, 1),
    to: "all of it",
    unit: "g",
  };
}
