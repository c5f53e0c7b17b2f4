import { columnsOfShares } from "../recipes/amounts/columnsOfShares";
import type { Recipe, RecipeBlock } from "../recipes/recipeBlock";

/** Where a recipe's amounts stand: in its own line, and again within its list, as shares or grams, when it is the only one. */
export function linesOfRecipe(block: RecipeBlock, recipe: Recipe): readonly Recipe[] {
  if (block.layout !== "down" || block.recipes.length > 1) return [recipe];
  return [recipe, ...columnsOfShares(block).map((line) => ({ ...recipe, line }))];
}
