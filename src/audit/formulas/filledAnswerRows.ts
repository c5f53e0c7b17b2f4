import { contains } from "../../workbook/references";
import { textAt } from "../recipes/cells";
import { rangeLines } from "../recipes/corrections/rangeLines";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { filledLine, type FilledLine } from "./filledLines";

/** Answers stand at most so many rows below recipes that are beside each other. */
const REACH = 25;
const LEAST_RECIPES = 3;
const MOST_RECIPES = 60;

/** The rows below recipes in columns that work out the same of each: portions, costs, what is frozen. */
export function filledAnswerRows(
  block: RecipeBlock,
  blocks: readonly RecipeBlock[],
): readonly FilledLine[] {
  const { sheet, layout, range, recipes } = block;
  const isTable = recipes.length >= LEAST_RECIPES && recipes.length <= MOST_RECIPES;
  if (layout !== "down" || !isTable) return [];
  const last = Math.min(range.bottom + REACH, sheet.rowCount - 1);
  const rows = rangeLines(range.bottom + 1, last);
  const end = rows.findIndex((row) =>
    blocks.some((other) => other.sheet === sheet && contains(other.range, row, range.left)),
  );
  return rows
    .slice(0, end < 0 ? rows.length : end)
    .filter((row) => textAt(sheet, row, block.names[0]?.column ?? range.left) !== "")
    .flatMap((row) => {
      const placeAt = (at: number) => ({ row, column: recipes[at]?.line ?? 0 });
      return filledLine(sheet, { length: recipes.length, placeAt }) ?? [];
    });
}
