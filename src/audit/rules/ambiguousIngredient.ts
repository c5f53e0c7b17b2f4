import { isListOfDrinks } from "../alcohol/isListOfDrinks";
import { freezingPointC } from "../answers/answers";
import type { AuditContext } from "../context";
import { freezingEffect } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { hydrateReadings } from "../solutions/hydrates";
import { meantMix } from "../mix";
import { lostByName } from "../amounts/lostByName";
import { amountOf } from "../recipes/amounts/amountOf";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { withoutExtracts } from "../recipes/names/withoutExtracts";
import type { Rule } from "../rule";

const identity = { id: "ambiguous-ingredient", severity: "error" } as const;

/** The warmest and the coldest freezing point that the choices give. */
function spreadOf(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  choices: readonly string[],
) {
  const recipe = block.recipes
    .slice(0, 100)
    .find((one) => (amountOf(block, one, name).grams ?? 0) > 0);
  if (recipe === undefined) return null;
  const points = choices.map((item) => {
    const names = block.names.map((one) => (one === name ? { ...one, item } : one));
    return freezingPointC(meantMix({ ...block, names }, recipe, context.checkFor(block)));
  });
  const known = points.filter((point) => point !== null);
  return { warmest: Math.max(...known), coldest: Math.min(...known), any: known.length > 1 };
}

function finding(context: AuditContext, block: RecipeBlock, name: RecipeName): Finding | null {
  const knowledge = context.checkFor(block)(name.item);
  if (knowledge.kind !== "ambiguous" || hydrateReadings(name.item, knowledge) !== null) return null;
  const spread = spreadOf(context, block, name, knowledge.choices);
  const lost = spread === null ? lostByName(context, block, name) : null;
  if (spread === null && lost === null) return null;
  const choices = knowledge.choices.map((choice) => `"${choice}"`).join(", ");
  return findingAt(identity, block.sheet, name, {
    message: `"${name.item}" can mean several things: ${choices}.`,
    effect: spread?.any === true ? freezingEffect(spread.warmest, spread.coldest) : lost,
    fix: "Write which one, or map the name once in the own-ingredients range (`same as`).",
  });
}

export const ambiguousIngredient: Rule = {
  ...identity,
  title: "An ingredient's name can mean several things",
  find: (context) =>
    // Which of them a bottle is, its strength beside it tells.
    withoutExtracts(context.blocks)
      .filter((block) => !isListOfDrinks(block))
      .flatMap((block) => block.names.flatMap((name) => finding(context, block, name) ?? [])),
};
