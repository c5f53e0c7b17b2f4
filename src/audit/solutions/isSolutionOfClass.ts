import { isClassBlock } from "../recipes/classSheet";
import { isWater } from "../recipes/forms/isWater";
import { headerRole } from "../recipes/headings/headerRole";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { pureSolute } from "./pureSolute";

const ICE = "ice fraction";

const tellsIce = ({ roles, answers = [] }: RecipeBlock): boolean =>
  [...roles.values()].includes(ICE) || answers.some(({ label }) => headerRole(label) === ICE);

/** No kitchen works out the moles in a kilogram of water. */
const worksWithMolality = ({ roles }: RecipeBlock): boolean =>
  [...roles.values()].includes("molality");

/**
 * Whether a list is pure substances in water with which a class works out moles, and none of it becomes ice: nobody
 * keeps it in a freezer, nor eats it.
 */
export const isSolutionOfClass = (block: RecipeBlock): boolean =>
  (isClassBlock(block) || worksWithMolality(block)) &&
  !tellsIce(block) &&
  block.names.every(({ item }) => isWater(item) || pureSolute(item, block.ownIngredients) !== null);
