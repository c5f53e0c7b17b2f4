import { componentPer100 } from "../answers/answers";
import type { RecipeBlock } from "../recipes/recipeBlock";

const known = new WeakMap<RecipeBlock, boolean>();

/** Whether nothing but drinks stands in a list: bottles and their strengths are no mix to be frozen. */
export function isListOfDrinks(block: RecipeBlock): boolean {
  const before = known.get(block);
  if (before !== undefined) return before;
  const { names, ownIngredients } = block;
  const isDrinks = names.every(
    ({ item }) => (componentPer100(item, "ethanol", ownIngredients) ?? 0) > 1,
  );
  known.set(block, isDrinks);
  return isDrinks;
}
