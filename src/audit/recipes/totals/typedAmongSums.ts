import { looksNumeric } from "../cells";
import type { FinderContext } from "../finderContext";
import type { RecipeBlock } from "../recipeBlock";
import { isAboutSum } from "./isAboutSum";
import { sumOfLine } from "./sumOfLine";
import type { FoundTotal } from "./summedApart";

/** The longest summary that is followed. */
const MOST_ROWS = 60;

/** The rows of typed numbers in the column of a sum, on both sides of it up to the first cell without a number. */
function typedRows({ sheet }: FinderContext, { total: { row, column } }: FoundTotal): number[] {
  return [-1, 1].flatMap((step) => {
    const rows: number[] = [];
    for (let at = row + step; Math.abs(at - row) <= MOST_ROWS; at += step) {
      if (!looksNumeric(sheet, at, column)) break;
      if (sheet.cellAt(at, column)?.formula === undefined) rows.push(at);
    }
    return rows;
  });
}

/** Typed totals in a column in which others are sums: they are those of the lists that have no sum there, in their order. */
export function typedAmongSums(
  context: FinderContext,
  lists: readonly RecipeBlock[],
  summed: readonly FoundTotal[],
): FoundTotal[] {
  const columns = new Set(summed.map(({ total }) => total.column));
  return [...columns].flatMap((column) => {
    const here = summed.filter(({ total }) => total.column === column);
    const rows = [...new Set(here.flatMap((one) => typedRows(context, one)))].sort((a, b) => a - b);
    const left = lists.filter(
      (block) =>
        block.recipes.length === 1 &&
        block.totals.length === 0 &&
        here.every((one) => one.block !== block),
    );
    if (here.length < 2 || rows.length !== left.length) return [];
    return left.flatMap((block, at): FoundTotal[] => {
      const [row = 0, line = 0] = [rows[at], block.recipes[0]?.line];
      const value = context.sheet.cellAt(row, column)?.value;
      const isTotal = typeof value === "number" && isAboutSum(value, sumOfLine(block, line));
      return isTotal ? [{ block, total: { row, column, line } }] : [];
    });
  });
}
