import type { WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import { textAt } from "../recipes/cells";
import { rangeLines } from "../recipes/corrections/rangeLines";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { goesOnFrom } from "./goesOnFrom";
import { sumsUp } from "./sumsUp";
import { filledLine, type FilledLine } from "./filledLines";

/** Answers stand at most so many rows below, or above, recipes that are beside each other. */
const REACH = 25;
const LEAST_RECIPES = 3;
const MOST_RECIPES = 60;

/** Whether a formula sums up its row as those above it do theirs: a column of means behind the recipes. */
const isOfColumnOfSums = (sheet: WorkbookSheet, place: Place): boolean =>
  sumsUp(sheet.cellAt(place.row, place.column)?.formula ?? "") &&
  [1, 2].some((step) => goesOnFrom(sheet, place, { ...place, row: place.row - step }));

/** The rows below and above recipes in columns that work out the same of each: portions, costs, what is frozen. */
export function filledAnswerRows(
  block: RecipeBlock,
  blocks: readonly RecipeBlock[],
): readonly FilledLine[] {
  const { sheet, layout, range, recipes } = block;
  const isTable = recipes.length >= LEAST_RECIPES && recipes.length <= MOST_RECIPES;
  if (layout !== "down" || !isTable) return [];
  const isOwn = (place: Place) => !isOfColumnOfSums(sheet, place);
  const isOfOther = (row: number) =>
    blocks.some((other) => other.sheet === sheet && contains(other.range, row, range.left));
  const below = rangeLines(range.bottom + 1, Math.min(range.bottom + REACH, sheet.rowCount - 1));
  const above = rangeLines(Math.max(0, range.top - REACH), range.top - 1).reverse();
  return [below, above]
    .flatMap((rows) => {
      const end = rows.findIndex(isOfOther);
      return rows.slice(0, end < 0 ? rows.length : end);
    })
    .filter((row) => textAt(sheet, row, block.names[0]?.column ?? range.left) !== "")
    .flatMap((row) => {
      const placeAt = (at: number) => ({ row, column: recipes[at]?.line ?? 0 });
      const line = filledLine(sheet, { length: recipes.length, placeAt });
      return line === null ? [] : { ...line, strangers: line.strangers.filter(isOwn) };
    });
}
