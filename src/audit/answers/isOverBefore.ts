import type { Place, RecipeBlock } from "../recipes/recipeBlock";

/**
 * Whether a worked example, which tells its own answers, ended above a list that a place stands beside: that place is
 * the list's, though it lies in the example's columns.
 */
export const isOverBefore = (
  { sheet, answers, range }: RecipeBlock,
  all: readonly RecipeBlock[],
  { row, column }: Place,
): boolean =>
  answers !== undefined &&
  row > range.bottom &&
  all.some(
    (list) =>
      list.sheet === sheet &&
      list.answers === undefined &&
      list.range.top > range.bottom &&
      list.range.right < column &&
      row >= list.range.top &&
      row <= list.range.bottom,
  );
