import type { RecipeBlock } from "../recipeBlock";
import { isExtract } from "./isExtract";

/** Lists without those that only say some lines of another one again: what is wrong there is told where it comes from. */
export const withoutExtracts = (blocks: readonly RecipeBlock[]): readonly RecipeBlock[] =>
  blocks.filter((block) => !isExtract(block, blocks));
