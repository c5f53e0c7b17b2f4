import type { CellRange } from "../../workbook/model";
import { contains } from "../../workbook/references";
import { rangesReadHere } from "../formulas/rangesReadHere";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { totalPlaces } from "../recipes/totals/totalPlaces";

/** The sum of several parts stands at most so far below each. */
const REACH_DOWN = 30;
/** "B8+B14", "SUM(B8,B14)": nothing is taken off or multiplied. */
const ADDS = /^[^*/-]+$/;
const MOST_RECIPES = 50;

const totalsOf = (block: RecipeBlock): readonly Place[] =>
  block.recipes.length > MOST_RECIPES
    ? []
    : block.recipes.flatMap((recipe) => totalPlaces(block, recipe));

const isCell = ({ top, bottom, left, right }: CellRange): boolean =>
  top === bottom && left === right;

/** What is added to a total in the rows below it; nothing where it is not added to anything. */
function addedTo({ sheet }: RecipeBlock, { row, column }: Place): readonly CellRange[] {
  const rows = Array.from({ length: REACH_DOWN }, (_, at) => row + 1 + at);
  return rows.flatMap((at) => {
    if (!ADDS.test(sheet.cellAt(at, column)?.formula ?? "")) return [];
    const read = rangesReadHere(sheet, { row: at, column });
    const isOwn = (range: CellRange) => isCell(range) && contains(range, row, column);
    return read.some(isOwn) ? read.filter((range) => !isOwn(range)) : [];
  });
}

/**
 * Whether a list's total is added up with the sum of something that was not read as a recipe: then the list is a part
 * of more than is known, and what stands beside it may be said of the whole.
 */
export function isPartOfMore(block: RecipeBlock, blocks: readonly RecipeBlock[]): boolean {
  if (block.layout !== "down") return false;
  const added = totalsOf(block).flatMap((total) => addedTo(block, total));
  if (added.length === 0) return false;
  const known = blocks.filter(({ sheet }) => sheet === block.sheet).flatMap(totalsOf);
  const isKnown = (range: CellRange) =>
    known.some(({ row, column }) => contains(range, row, column));
  return added.some((range) => !isKnown(range));
}
