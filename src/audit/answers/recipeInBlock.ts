import { contains } from "../../workbook/references";
import { linesOfRecipe } from "../amounts/linesOfRecipe";
import type { RangeRead } from "../formulas/rangesRead";
import { amountPlace, type Recipe, type RecipeBlock } from "../recipes/recipeBlock";

/** A recipe in its list. */
export interface RecipeInBlock {
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
}

/** Whether some of the ranges that a formula reads hold an amount of a recipe. */
export const readsAmounts = (
  ranges: readonly RangeRead[],
  { block, recipe }: RecipeInBlock,
): boolean =>
  linesOfRecipe(block, recipe).some((line) =>
    ranges.some(
      ({ sheet, range }) =>
        sheet === block.sheet &&
        block.names.some((name) => {
          const amount = amountPlace(block, line, name);
          return contains(range, amount.row, amount.column);
        }),
    ),
  );

/** Whether one of the ranges that a formula reads holds the total of a recipe. */
export const readsTotal = (
  ranges: readonly RangeRead[],
  { block, recipe: { line } }: RecipeInBlock,
): boolean =>
  block.totals.some((total) => {
    const [row, column] = block.layout === "down" ? [total, line] : [line, total];
    return ranges.some(({ sheet, range }) => sheet === block.sheet && contains(range, row, column));
  });
