import type { RecipeBlock } from "../recipeBlock";
import { contentsByFormula } from "./contentsByFormula";
import { contentsByHeading } from "./contentsByHeading";

/** A list without the lines that say what its amounts are made of; nothing where no other line is left. */
export function withoutContents(block: RecipeBlock): readonly RecipeBlock[] {
  const contents = new Set([...contentsByHeading(block), ...contentsByFormula(block)]);
  if (contents.size === 0) return [block];
  const recipes = block.recipes.filter((one) => !contents.has(one));
  return recipes.length === 0 ? [] : [{ ...block, recipes }];
}
