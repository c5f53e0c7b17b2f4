import { isBlank } from "../recipes/cells";
import { rangeLines } from "../recipes/corrections/rangeLines";
import type { RecipeBlock } from "../recipes/recipeBlock";

/** Rows below a list in which its target is looked for. */
export const REACH_DOWN = 40;

/** How many rows lie between a row and a list: none inside it. What stands above a list that goes on below another is not its own. */
function rowsAway({ range: { top, bottom }, headerRow }: RecipeBlock, row: number): number {
  const goesOn = headerRow !== null && headerRow < top;
  return goesOn && row < top ? Number.POSITIVE_INFINITY : Math.max(0, top - row, row - bottom);
}

/** How many rows between a row and a list have nothing in the list's columns. */
function blankRowsTo({ sheet, range }: RecipeBlock, row: number): number {
  const [from, to] = row > range.bottom ? [range.bottom + 1, row - 1] : [row + 1, range.top - 1];
  const columns = rangeLines(range.left, range.right);
  return rangeLines(from, to).filter((at) => columns.every((each) => isBlank(sheet, at, each)))
    .length;
}

/** By the blank rows between, by which lists are set apart with what is said of them; else by all rows; else what stands below a list is its own. */
function isNearer(one: RecipeBlock, other: RecipeBlock, row: number): boolean {
  const [mine, its] = [rowsAway(one, row), rowsAway(other, row)];
  if (Math.max(mine, its) > REACH_DOWN) return mine < its;
  const apart = blankRowsTo(one, row) - blankRowsTo(other, row);
  if (apart !== 0) return apart < 0;
  return mine === its ? one.range.bottom < row && row < other.range.top : mine < its;
}

/** Whether a row stands nearer to another list of the sheet, above or below this one. */
export const isNearerToOther = (
  block: RecipeBlock,
  all: readonly RecipeBlock[],
  row: number,
): boolean =>
  all.some(
    (other) =>
      other.sheet === block.sheet &&
      other.range.left <= block.range.right &&
      block.range.left <= other.range.right &&
      isNearer(other, block, row),
  );
