import { rounded } from "../effect";
import { changedMix, gramsIn } from "../mix";
import { findingAt } from "../findingAt";
import type { Finding } from "../finding";
import { amountOf } from "../recipes/amounts/amountOf";
import { plainWords } from "../recipes/headings/plainWords";
import type { Recipe, RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Rule } from "../rule";
import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import { cellName } from "../../workbook/address";

const identity = { id: "ingredient-twice", severity: "warning" } as const;

function repeats({ names }: RecipeBlock): { first: RecipeName; again: RecipeName }[] {
  const seen = new Map<string, RecipeName>();
  return names.flatMap((name) => {
    const key = plainWords(name.item);
    const first = seen.get(key);
    if (first === undefined) seen.set(key, name);
    return first === undefined ? [] : { first, again: name };
  });
}

/** Amounts are rounded, be it to three digits, and one of them made to fit the sum. */
const CLOSE = 0.008;

const FIXES = {
  down: "Delete one of the rows if it was copied by mistake.",
  across: "Delete one of the columns if it was copied by mistake.",
} as const;

const isSame = (one: number, other: number): boolean =>
  Math.abs(one - other) <= CLOSE * Math.max(one, other);

function findIn(context: AuditContext, block: RecipeBlock): Finding[] {
  return repeats(block).flatMap(({ first, again }) => {
    // The same amount twice is a row copied by mistake; two amounts may be two additions.
    const isTwice = (one: Recipe) => {
      const [a, b] = [amountOf(block, one, first).grams, amountOf(block, one, again).grams];
      return a !== null && b !== null && a > 0 && isSame(a, b);
    };
    const recipe = block.recipes.find(isTwice);
    if (recipe === undefined) return [];
    // Of recipes in rows one may have two additions alike where others have not.
    if (block.layout === "across" && !block.recipes.every(isTwice)) return [];
    const twice = context.mixOf(block, recipe);
    const once = changedMix(twice, again, { grams: 0 });
    const whole = twice.grams.reduce((sum, grams) => sum + grams, 0);
    const repeated = gramsIn(twice, again);
    const effect = mixEffect(twice, once) ?? {
      quantity: "mass of the recipe",
      from: rounded(whole, 1),
      to: rounded(whole - repeated, 1),
      unit: "g",
    };
    return findingAt(identity, block.sheet, again, {
      message: `${again.item} stands twice with the same amount (${cellName(first.row, first.column)} and ${cellName(again.row, again.column)}).`,
      effect,
      fix: FIXES[block.layout],
    });
  });
}

export const repeatedIngredient: Rule = {
  ...identity,
  title: "An ingredient stands twice with the same amount",
  find: (context) => context.blocks.flatMap((block) => findIn(context, block)),
};
