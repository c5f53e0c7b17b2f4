import type { RecipeBlock } from "../recipes/recipeBlock";
import { pureSolute } from "../solutions/pureSolute";
import { isWater } from "../recipes/forms/isWater";

/** Whether one substance is dissolved in water: a share without a name is that of the substance. */
export const isOfOneSolute = ({ names, ownIngredients }: RecipeBlock): boolean => {
  const [solute, ...more] = names.filter(({ item }) => !isWater(item));
  const isIt = solute !== undefined && more.length === 0 && names.length === 2;
  return isIt && pureSolute(solute.item, ownIngredients) !== null;
};
