import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { hydrateReadings } from "../hydrates";
import { amountOf } from "../recipes/amountOf";
import type { Recipe, RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "hydrate-not-stated", severity: "warning" } as const;

/** The first recipe of the block that has some of it. */
function recipeWith(
  block: RecipeBlock,
  name: RecipeName,
): { recipe: Recipe; grams: number } | null {
  for (const recipe of block.recipes) {
    const { grams } = amountOf(block, recipe, name);
    if (grams !== null && grams > 0) return { recipe, grams };
  }
  return null;
}

function finding(context: AuditContext, block: RecipeBlock, name: RecipeName): Finding | null {
  const readings = hydrateReadings(name.item);
  // Where the name is known, the user's own-ingredients range has said which it is.
  if (readings === null || context.checkFor(block)(name.item) === null) return null;
  const used = recipeWith(block, name);
  if (used === null) return null;
  const rest = context.mixOf(block, used.recipe);
  const read = (item: string) => ({
    ...rest,
    items: [...rest.items, item],
    grams: [...rest.grams, used.grams],
  });
  return findingAt(identity, block.sheet, name, {
    message: `"${name.item}" does not say whether it is ${readings.anhydrous} or ${readings.hydrate}, which brings its own water.`,
    effect: mixEffect(read(readings.anhydrous), read(readings.hydrate)),
    fix: `Write "${readings.hydrate}" or "${readings.anhydrous}", as the bag says.`,
  });
}

export const hydrateNotStated: Rule = {
  ...identity,
  title: "A name leaves open whether crystal water is in it",
  find: (context) =>
    context.blocks.flatMap((block) =>
      block.names.flatMap((name) => finding(context, block, name) ?? []),
    ),
};
