import { componentGrams } from "../answers/answers";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { changedMix, gramsIn } from "../mix";
import { pureSolute } from "../solutions/pureSolute";
import type { Recipe, RecipeBlock } from "../recipes/recipeBlock";
import { amountPlace } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "lactose-twice", severity: "error" } as const;

/** A row of lactose that repeats the lactose of the dairy rows agrees with it this closely. */
const AGREES = 0.06;

function findIn(context: AuditContext, block: RecipeBlock, recipe: Recipe): Finding[] {
  const mix = context.mixOf(block, recipe);
  const lactose = block.names.find(({ item }) =>
    /^lactose/.test(pureSolute(item, block.ownIngredients)?.name ?? ""),
  );
  const grams = lactose === undefined ? 0 : gramsIn(mix, lactose);
  if (lactose === undefined || grams <= 0) return [];
  const without = changedMix(mix, lactose, { grams: 0 });
  const inDairy = componentGrams(without, "lactose");
  const inAll = componentGrams(mix, "lactose");
  if (inDairy === null || inAll === null || inDairy <= 0) return [];
  // Of a hydrate either the weight or the lactose in it may repeat the milk's.
  const agrees = [grams, inAll - inDairy].some((one) => Math.abs(one / inDairy - 1) <= AGREES);
  if (!agrees) return [];
  return [
    findingAt(identity, block.sheet, amountPlace(block, recipe, lactose), {
      message: `${rounded(grams, 1)} g of lactose is what the milk ingredients bring already (${rounded(inDairy, 1)} g): it is counted twice.`,
      effect: mixEffect(mix, without),
      fix: "Delete the row if no lactose is added.",
    }),
  ];
}

export const lactoseTwice: Rule = {
  ...identity,
  title: "The lactose of the milk is counted twice",
  find: (context) =>
    context.blocks.flatMap((block) =>
      block.recipes.slice(0, 1000).flatMap((recipe) => findIn(context, block, recipe)),
    ),
};
