import { componentPer100 } from "../answers/answers";
import { holdsNumber } from "../recipes/cells";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";

/** Whether a list says of one of its names how strong it is: "Herb liqueur | 30 % vol". */
const hasStrength = ({ sheet, layout, roles }: RecipeBlock, { row }: RecipeName): boolean =>
  layout === "down" &&
  [...roles].some(([column, role]) => role === "abv" && holdsNumber(sheet, row, column));

const known = new WeakMap<RecipeBlock, boolean>();

/** Whether nothing but drinks stands in a list: bottles and their strengths are no mix to be frozen. */
export function isListOfDrinks(block: RecipeBlock): boolean {
  const before = known.get(block);
  if (before !== undefined) return before;
  const { names, ownIngredients } = block;
  const isDrinks = names.every(
    (name) =>
      (componentPer100(name.item, "ethanol", ownIngredients) ?? 0) > 1 || hasStrength(block, name),
  );
  known.set(block, isDrinks);
  return isDrinks;
}
