import { componentPer100 } from "../answers";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { amountOf } from "../recipes/amountOf";
import type { Role } from "../recipes/headerRole";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "abv-as-mass", severity: "error" } as const;

const columnOf = (block: RecipeBlock, role: Role) =>
  [...block.roles].find(([, one]) => one === role)?.[0];

const numberAt = (block: RecipeBlock, row: number, column: number | undefined): number | null => {
  const value = column === undefined ? null : block.sheet.cellAt(row, column)?.value;
  return typeof value === "number" ? value : null;
};

function finding(context: AuditContext, block: RecipeBlock, name: RecipeName): Finding | null {
  const [abvColumn, ethanolColumn] = [columnOf(block, "abv"), columnOf(block, "ethanol")];
  const written = numberAt(block, name.row, abvColumn);
  const ethanol = numberAt(block, name.row, ethanolColumn);
  const [recipe] = block.recipes;
  const grams = recipe === undefined ? null : amountOf(block, recipe, name).grams;
  if (
    written === null ||
    ethanol === null ||
    !grams ||
    recipe === undefined ||
    ethanolColumn === undefined
  )
    return null;
  const abvPercent = written <= 1 ? written * 100 : written; // a share shown in percent
  const right = componentPer100(name.item, "ethanol", block.ownIngredients);
  const byVolume = Math.abs(ethanol / (grams * abvPercent * 0.01) - 1) < 0.005;
  if (right === null || right < 1 || !byVolume) return null;
  const rightGrams = (grams * right) / 100;
  if (ethanol < rightGrams * 1.05) return null;
  const meant = context.mixOf(block, recipe);
  const mistaken = {
    ...meant,
    items: [...meant.items, "ethanol"],
    grams: [...meant.grams, ethanol - rightGrams],
  };
  return findingAt(
    identity,
    block.sheet,
    { row: name.row, column: ethanolColumn },
    {
      message: `The alcohol in ${name.item} is taken as ${rounded(abvPercent, 1)} % of its mass, but that is its share by volume: ${rounded(right, 1)} % by mass.`,
      effect: mixEffect(mistaken, meant),
      fix: `Use ${rounded(rightGrams, 2)} g of ethanol.`,
    },
  );
}

export const abvAsMass: Rule = {
  ...identity,
  title: "Alcohol by volume is used as a share of the mass",
  find: (context) =>
    context.blocks
      .filter(({ layout }) => layout === "down")
      .flatMap((block) => block.names.flatMap((name) => finding(context, block, name) ?? [])),
};
