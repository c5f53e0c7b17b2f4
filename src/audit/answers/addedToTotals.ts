import type { CellRange } from "../../workbook/model";
import { contains } from "../../workbook/references";
import { rangesReadHere } from "../formulas/rangesReadHere";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { totalsOf } from "./totalsOf";

/** The sum of several parts stands at most so far below each. */
const REACH_DOWN = 30;
/** "B8+B14", "SUM(B8,B14)": nothing is taken off or multiplied. */
const ADDS = /^[^*/-]+$/;
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

/** What is added to the totals of a list and stands outside it: the sums of other parts of a mix that is weighed out in parts. */
export const addedToTotals = (block: RecipeBlock): readonly CellRange[] =>
  block.layout === "down"
    ? totalsOf(block)
        .flatMap((total) => addedTo(block, total))
        .filter(({ top, left }) => !contains(block.range, top, left))
    : [];
