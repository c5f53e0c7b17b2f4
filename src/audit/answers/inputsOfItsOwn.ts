import { overlaps } from "../../workbook/references";
import type { RangeRead } from "../formulas/rangesRead";
import type { RecipeBlock } from "../recipes/recipeBlock";

const isOneCell = ({ range }: RangeRead): boolean =>
  range.top === range.bottom && range.left === range.right;

/**
 * Whether what a formula goes back to are numbers of its own: two and more, typed one by one, none of them in a
 * list. Then it is not about the list that it stands beside.
 */
export function hasInputsOfItsOwn(
  ranges: readonly RangeRead[],
  blocks: readonly RecipeBlock[],
): boolean {
  const isOfList = (read: RangeRead) =>
    blocks.some((block) => block.sheet === read.sheet && overlaps(block.range, read.range));
  if (ranges.some(isOfList)) return false;
  const typed = ranges.filter((read) => {
    const cell = read.sheet.cellAt(read.range.top, read.range.left);
    return isOneCell(read) && typeof cell?.value === "number" && cell.formula === undefined;
  });
  return new Set(typed.map(({ range }) => `${range.top},${range.left}`)).size > 1;
}
