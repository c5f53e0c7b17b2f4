import { findItem } from "../../catalogue/findItem";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { amountOf } from "../recipes/amountOf";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "unknown-ingredient", severity: "error" } as const;

/** Rows of a costing sheet that are no food. Common practice, no source. */
const NO_FOOD =
  /\b(sticks?|box(es)?|labels?|wrappers?|bags?|cups? and lids?|lids?|tubs?|moulds?|molds?|napkins?|packaging|labou?r|work|energy|electricity|rent|delivery|stiele?|schachteln?|etiketten?|verpackung|arbeit\w*|strom|miete)\b/i;

/** Share of the recipe's mass that has this name, at its largest over the block's recipes, in %. */
function largestShare(block: RecipeBlock, name: RecipeName): number {
  const shares = block.recipes.slice(0, 200).map((recipe) => {
    const grams = block.names.map((one) => amountOf(block, recipe, one).grams ?? 0);
    const total = grams.reduce((sum, value) => sum + Math.max(0, value), 0);
    return total > 0 ? ((amountOf(block, recipe, name).grams ?? 0) / total) * 100 : 0;
  });
  return Math.max(0, ...shares);
}

function finding(context: AuditContext, block: RecipeBlock, name: RecipeName): Finding | null {
  const knowledge = context.checkFor(block)(name.item);
  if (knowledge.kind !== "unknown" || NO_FOOD.test(name.item)) return null;
  const share = largestShare(block, name);
  if (share === 0) return null;
  const match = findItem(name.item);
  const nearest = match.kind === "unknown" ? match.nearest : [];
  const hint =
    nearest.length === 0
      ? "no name resembles it"
      : `the nearest name is "${nearest.join('" or "')}"`;
  const effect: Effect = {
    quantity: "mass not accounted for",
    from: rounded(share, 1),
    to: 0,
    unit: "% of the mix",
  };
  return findingAt(identity, block.sheet, name, {
    message: `"${name.item}" is neither in the catalogue nor an own ingredient; ${hint}.`,
    effect,
    fix: "Use a name of the catalogue, or add it to the own-ingredients range (`same as`, or its composition).",
  });
}

export const unknownIngredient: Rule = {
  ...identity,
  title: "An ingredient is not known",
  find: (context) =>
    context.blocks.flatMap((block) =>
      block.names.flatMap((name) => finding(context, block, name) ?? []),
    ),
};
