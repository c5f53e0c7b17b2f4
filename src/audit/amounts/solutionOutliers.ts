import { pureSolute } from "../solutions/pureSolute";
import type { RecipeBlock } from "../recipes/recipeBlock";
import type { Line, MassOutlier } from "./massOutlier";
import { isWater } from "../recipes/forms/isWater";

/** No water takes up so many times its mass, and nobody makes less than a five-hundredth of it up by the tonne. */
const [MOST, LEAST] = [10, 1 / 500];
const A_TONNE_GRAMS = 1_000_000;
const LEAST_GRAMS = 4;

/** In a brine or syrup of two lines the one that is a thousand times too large or too small. */
export function solutionOutliers(block: RecipeBlock, lines: readonly Line[]): MassOutlier[] {
  const water = lines.find(({ name }) => isWater(name.item));
  const solute = lines.find((line) => line !== water);
  if (lines.length !== 2 || water === undefined || solute === undefined) return [];
  if (pureSolute(solute.name.item, block.ownIngredients) === null) return [];
  const ratio = solute.grams / water.grams;
  const why = "which no water takes up";
  if (ratio > MOST && ratio < 1000 * MOST)
    return water.grams < LEAST_GRAMS
      ? [{ name: water.name, factor: 1000, why }]
      : [{ name: solute.name, factor: 0.001, why }];
  return ratio < LEAST && water.grams >= A_TONNE_GRAMS
    ? [{ name: water.name, factor: 0.001, why: "which leaves next to nothing dissolved" }]
    : [];
}
