import type { Recipe, RecipeBlock } from "../recipes/recipeBlock";
import { massOutliers } from "./massOutliers";
import { misreadShares } from "./misreadShares";
import { shareLines } from "./shareLines";

/** Whether the amounts themselves are not what is meant: then an answer need not be what comes of them. */
export const isMisread = (block: RecipeBlock, recipe: Recipe): boolean =>
  massOutliers(block, recipe).length > 0 ||
  shareLines(block).some((line) => misreadShares(line).length > 0);
