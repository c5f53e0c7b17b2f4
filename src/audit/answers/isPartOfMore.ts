import type { CellRange } from "../../workbook/model";
import { contains } from "../../workbook/references";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { addedToTotals } from "./addedToTotals";
import { totalsOf } from "./totalsOf";

/**
 * Whether a list's total is added up with the sum of something that was not read as a recipe: then the list is a part
 * of more than is known, and what stands beside it may be said of the whole.
 */
export function isPartOfMore(block: RecipeBlock, blocks: readonly RecipeBlock[]): boolean {
  const added = addedToTotals(block);
  if (added.length === 0) return false;
  const known = blocks.filter(({ sheet }) => sheet === block.sheet).flatMap(totalsOf);
  const isKnown = (range: CellRange) =>
    known.some(({ row, column }) => contains(range, row, column));
  return added.some((range) => !isKnown(range));
}
