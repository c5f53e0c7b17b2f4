import { compositionGrams } from "../answers/answers";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { Rule } from "../rule";
import {
  isMoreThan,
  judgedRecipes,
  mainSource,
  per100Water,
  solubility20,
  titleOf,
  type JudgedRecipe,
} from "../solutions/solubility";

const identity = { id: "more-than-dissolves", severity: "warning" } as const;

function findIn(judged: JudgedRecipe): Finding[] {
  const { mix, block, recipe } = judged;
  return [...compositionGrams(mix).keys()].flatMap((substance) => {
    const limit = solubility20(substance);
    const there = per100Water(mix, substance);
    if (limit === null || !isMoreThan(limit, there)) return [];
    return findingAt(identity, block.sheet, mainSource(judged, substance), {
      message: `${titleOf(recipe)} has ${rounded(there, 0)} g of ${substance} per 100 g of water; at 20 °C only ${limit} g dissolve, in the cold less.`,
      effect: {
        quantity: `${substance} per 100 g of water`,
        from: rounded(there, 1),
        to: limit,
        unit: "g",
      },
      fix: `Take less ${substance} or more water.`,
    });
  });
}

export const solubilityExceeded: Rule = {
  ...identity,
  title: "More of a substance than dissolves before freezing",
  find: (context) => judgedRecipes(context).flatMap(findIn),
};
