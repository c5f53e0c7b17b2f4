import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { Effect } from "../finding";
import { changedMix, gramsIn } from "../mix";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";

/** What it does to the answer to count `factor` times the right number of particles of one ingredient. */
export function effectOfCounting(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  factor: number,
): Effect | null {
  const recipe = block.recipes.find((one) => gramsIn(context.mixOf(block, one), name) > 0);
  if (recipe === undefined) return null;
  const meant = context.mixOf(block, recipe);
  return mixEffect(changedMix(meant, name, { grams: gramsIn(meant, name) * factor }), meant);
}
