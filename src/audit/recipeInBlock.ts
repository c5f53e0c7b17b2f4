import { contains } from "../workbook/references";
import type { RangeRead } from "./rangesRead";
import { amountPlace, type Recipe, type RecipeBlock } from "./recipes/recipeBlock";

/** A recipe in its list. */
export interface RecipeInBlock {
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
}

/** Where the amounts of a recipe stand: in its own line, and as shares or grams beside it when it is the only one. */
function linesOf({ block, recipe }: RecipeInBlock): readonly Recipe[] {
  if (block.layout !== "down" || block.recipes.length > 1) return [recipe];
  const again = [...block.roles].filter(
    ([line, role]) => role === "amount" && line !== recipe.line,
  );
  return [recipe, ...again.map(([line]) => ({ ...recipe, line }))];
}

/** Whether some of the ranges that a formula reads hold an amount of a recipe. */
export const readsAmounts = (
  ranges: readonly RangeRead[],
  { block, recipe }: RecipeInBlock,
): boolean =>
  linesOf({ block, recipe }).some((line) =>
    ranges.some(
      ({ sheet, range }) =>
        sheet === block.sheet &&
        block.names.some((name) => {
          const amount = amountPlace(block, line, name);
          return contains(range, amount.row, amount.column);
        }),
    ),
  );
