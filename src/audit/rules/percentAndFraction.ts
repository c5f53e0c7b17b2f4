import { cellName } from "../../workbook/address";
import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { changedMix } from "../mix";
import { amountOf, type Amount } from "../recipes/amountOf";
import type { Recipe, RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "percent-and-fraction", severity: "error" } as const;

interface Share {
  readonly name: RecipeName;
  readonly amount: Amount;
  readonly percent: number;
}

/** The one share that makes the shares come to 100 % when it is read as a fraction; null when none does. */
function misread(shares: readonly Share[]): Share | null {
  const sum = shares.reduce((total, { percent }) => total + percent, 0);
  const fits = ({ percent }: Share) => Math.abs(sum + 99 * percent - 100) <= 0.5;
  const small = shares.filter((share) => share.percent > 0 && share.percent <= 1 && fits(share));
  return small.length === 1 && Math.abs(sum - 100) > 0.5 ? (small[0] ?? null) : null;
}

function findIn(context: AuditContext, block: RecipeBlock, recipe: Recipe): Finding[] {
  if (recipe.unit !== "%") return [];
  const shares = block.names.flatMap((name): Share[] => {
    const amount = amountOf(block, recipe, name);
    return amount.unit === "%" && amount.grams !== null
      ? [{ name, amount, percent: amount.grams }]
      : [];
  });
  const share = misread(shares);
  if (share === null || shares.length < 3) return [];
  const typed = context.mixOf(block, recipe);
  const meant = changedMix(typed, share.name, { grams: share.percent * 100 });
  const address = cellName(share.amount.row, share.amount.column);
  return [
    findingAt(
      identity,
      block.sheet,
      { row: share.amount.row, column: share.amount.column },
      {
        message: `${address} is ${share.percent} in a column of percentages: as ${rounded(share.percent * 100, 2)} % the shares come to 100 %.`,
        effect: mixEffect(typed, meant),
        fix: `Enter ${rounded(share.percent * 100, 4)}.`,
        edits: numberEdit(block.sheet, share.amount, rounded(share.percent * 100, 4)),
      },
    ),
  ];
}

export const percentAndFraction: Rule = {
  ...identity,
  title: "A fraction stands in a column of percentages",
  find: (context) =>
    context.blocks.flatMap((block) =>
      block.recipes.length > 1000
        ? []
        : block.recipes.flatMap((recipe) => findIn(context, block, recipe)),
    ),
};
