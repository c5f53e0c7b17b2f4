import { iceFraction } from "../answers/answers";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { Rule } from "../rule";
import { isSolutionOfClass } from "../solutions/isSolutionOfClass";
import {
  isMoreThan,
  judgedRecipes,
  mainSource,
  per100Water,
  solubility20,
  titleWithin,
  type JudgedRecipe,
} from "../solutions/solubility";

const identity = { id: "polyol-will-crystallise", severity: "warning" } as const;

/** These two do not stay in solution beyond their solubility as sugars do. Common practice, no source. */
const CRYSTALLISE = ["erythritol", "mannitol"] as const;
/** The household freezer in which a batch is kept. */
const STORED_AT_C = -18;

/** The share of the water that is ice in the freezer, or at the coldest for which there is an answer. */
const iceAsCold = (mix: JudgedRecipe["mix"]): number | null =>
  [STORED_AT_C, -15, -12, -9, -6]
    .map((temperatureC) => iceFraction(mix, temperatureC, "water"))
    .find((ice) => ice !== null) ?? null;

/**
 * In the freezer the substance stands in the water that is not ice. More there than dissolves even at 20 °C
 * cannot stay dissolved: it is less in the cold.
 */
function findIn(judged: JudgedRecipe): Finding[] {
  const { mix, block, recipe } = judged;
  return CRYSTALLISE.flatMap((substance) => {
    const [there, limit] = [per100Water(mix, substance), solubility20(substance)];
    if (there === 0 || limit === null || isMoreThan(limit, there)) return []; // told elsewhere
    const ice = iceAsCold(mix);
    const cold = ice === null || ice >= 1 ? null : there / (1 - ice);
    if (cold === null || cold <= limit) return [];
    return findingAt(identity, block.sheet, mainSource(judged, substance), {
      message: `The ${substance} in ${titleWithin(recipe)} will crystallise: at −18 °C the water left liquid has ${rounded(cold, 0)} g per 100 g, and not even at 20 °C do more than ${limit} g dissolve.`,
      effect: {
        quantity: `${substance} per 100 g of unfrozen water at −18 °C`,
        from: rounded(cold, 0),
        to: limit,
        unit: "g",
      },
      fix: `Replace part of the ${substance} by a sugar that stays dissolved.`,
    });
  });
}

export const polyolCrystallises: Rule = {
  ...identity,
  title: "Erythritol or mannitol that will crystallise in the freezer",
  find: (context) =>
    judgedRecipes(context)
      .filter(({ block }) => !isSolutionOfClass(block))
      .flatMap(findIn),
};
