import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { totalPlaces } from "../recipes/totals/totalPlaces";

const MOST_RECIPES = 50;

/** Where the totals of a list stand; of one with very many recipes they are not looked for. */
export const totalsOf = (block: RecipeBlock): readonly Place[] =>
  block.recipes.length > MOST_RECIPES
    ? []
    : block.recipes.flatMap((recipe) => totalPlaces(block, recipe));
