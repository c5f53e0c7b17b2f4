import { rounded } from "../effect";
import { findingAt } from "../findingAt";
import type { Rule } from "../rule";
import { isSolutionOfClass } from "../solutions/isSolutionOfClass";
import { judgedRecipes, mainSource, per100Water, titleOf } from "../solutions/solubility";

const identity = { id: "lactose-may-feel-sandy", severity: "warning" } as const;

/** g of lactose per 100 g of water above which crystals are felt in storage. Common practice, no source. */
const SANDY_PER_100 = 9.6;

export const lactoseSandy: Rule = {
  ...identity,
  title: "So much lactose that it may crystallise and feel sandy",
  find: (context) =>
    judgedRecipes(context).flatMap((judged) => {
      const lactose = per100Water(judged.mix, "lactose");
      if (lactose <= SANDY_PER_100 || isSolutionOfClass(judged.block)) return [];
      return findingAt(identity, judged.block.sheet, mainSource(judged, "lactose"), {
        message: `${titleOf(judged.recipe)} has ${rounded(lactose, 1)} g of lactose per 100 g of water; above about ${SANDY_PER_100} g it may crystallise in storage and feel like sand.`,
        effect: {
          quantity: "lactose per 100 g of water",
          from: rounded(lactose, 1),
          to: SANDY_PER_100,
          unit: "g",
        },
        fix: "Take less milk powder, or eat it fresh.",
      });
    }),
};
