import { isBlank, textAt } from "../recipes/cells";
import { rangeLines } from "../recipes/corrections/rangeLines";
import type { RecipeBlock } from "../recipes/recipeBlock";

/** Rows below a list in which its target is looked for. */
export const REACH_DOWN = 40;

/** Whether a list's title, words alone below a free row, stands between it and what begins above with more than a title. */
function isAboveTitle({ sheet, range: { top, left, right } }: RecipeBlock, row: number): boolean {
  const columns = rangeLines(left, right);
  const filled = (at: number) => columns.filter((column) => !isBlank(sheet, at, column)).length;
  let first = row;
  while (first > row - REACH_DOWN && filled(first - 1) > 0) first -= 1;
  const isTitle = (at: number) => filled(at) === 1 && filled(at - 1) === 0;
  return filled(first) > 1 && rangeLines(row + 1, top - 1).some(isTitle);
}

/**
 * How many rows lie between a row and a list: none inside it. What stands above a list that goes on below another is not
 * its own, and what stands above its title only where no list is near.
 */
function rowsAway(block: RecipeBlock, row: number): number {
  const { top, bottom } = block.range;
  if (row >= top) return Math.max(0, row - bottom);
  if (block.headerRow !== null && block.headerRow < top) return Number.POSITIVE_INFINITY;
  return top - row + (isAboveTitle(block, row) ? REACH_DOWN : 0);
}

/** How many rows between a row and a list have nothing in the list's columns. */
function blankRowsTo({ sheet, range }: RecipeBlock, row: number): number {
  const [from, to] = row > range.bottom ? [range.bottom + 1, row - 1] : [row + 1, range.top - 1];
  const columns = rangeLines(range.left, range.right);
  return rangeLines(from, to).filter((at) => columns.every((each) => isBlank(sheet, at, each)))
    .length;
}

/** Whether the words of a row stand again below a list, below which no other stands. */
function isSaidBelow({ sheet, range }: RecipeBlock, row: number): boolean {
  const { left, right, bottom } = range;
  const label = rangeLines(left, right).find((at) => textAt(sheet, row, at) !== "");
  return (
    label !== undefined &&
    rangeLines(bottom + 1, bottom + REACH_DOWN).some(
      (at) => at !== row && textAt(sheet, at, label) === textAt(sheet, row, label),
    )
  );
}

/**
 * By the blank rows between, by which lists are set apart with what is said of them; else by what is said below the last
 * of all; else by all rows; else what stands below a list is its own.
 */
function isNearer(one: RecipeBlock, other: RecipeBlock, row: number, last: RecipeBlock): boolean {
  const [mine, its] = [rowsAway(one, row), rowsAway(other, row)];
  if (Math.max(mine, its) > REACH_DOWN) return mine < its;
  const apart = blankRowsTo(one, row) - blankRowsTo(other, row);
  if (apart !== 0) return apart < 0;
  const isBelowOne = one.range.bottom < row && row < other.range.top;
  const isBelowOther = other.range.bottom < row && row < one.range.top;
  if ((isBelowOne || isBelowOther) && isSaidBelow(last, row)) return isBelowOne;
  return mine === its ? isBelowOne : mine < its;
}

/** Whether a row stands nearer to another list of the sheet, above or below this one. */
export function isNearerToOther(
  block: RecipeBlock,
  all: readonly RecipeBlock[],
  row: number,
): boolean {
  const { sheet, range } = block;
  const { left, right } = range;
  const others = all.filter(
    (other) => other.sheet === sheet && other.range.left <= right && left <= other.range.right,
  );
  const isLower = (one: RecipeBlock, than: RecipeBlock) => one.range.bottom > than.range.bottom;
  const last = others.reduce((lowest, one) => (isLower(one, lowest) ? one : lowest), block);
  return others.some((other) => isNearer(other, block, row, last));
}
