import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { changedMix } from "../mix";
import { amountOf } from "../recipes/amountOf";
import type { RecipeBlock } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "hidden-amount", severity: "warning" } as const;

/** One finding for a hidden ingredient, shown by its effect on the block's first recipe that has some. */
function findIn(context: AuditContext, block: RecipeBlock): Finding[] {
  const { hiddenRows, hiddenColumns } = block.sheet;
  const isHidden = block.layout === "down" ? hiddenRows : hiddenColumns;
  if (isHidden.size === 0) return [];
  return block.names.flatMap((name) => {
    if (!isHidden.has(block.layout === "down" ? name.row : name.column)) return [];
    const recipe = block.recipes.find((one) => (amountOf(block, one, name).grams ?? 0) > 0);
    if (recipe === undefined) return [];
    const all = context.mixOf(block, recipe);
    const place = amountOf(block, recipe, name);
    return findingAt(
      identity,
      block.sheet,
      { row: place.row, column: place.column },
      {
        message: `${name.item} is hidden but still counts in the recipe.`,
        effect: mixEffect(changedMix(all, name, { grams: 0 }), all),
        fix: "Show the row or column, or delete it.",
      },
    );
  });
}

export const hiddenAmount: Rule = {
  ...identity,
  title: "A hidden ingredient counts in a recipe",
  find: (context) => context.blocks.flatMap((block) => findIn(context, block)),
};
