import { isSumOfColumn } from "../recipes/totals/isSumOfColumn";
import { rangeLines } from "../recipes/corrections/rangeLines";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { filledLine, type FilledLine } from "./filledLines";

/** What all recipes take of each ingredient stands at most so many rows below them. */
const REACH = 3;
const MOST_NAMES = 100;

/** The rows of sums below recipes in rows: what all of them take of each ingredient. */
export function filledSumsBelow({ sheet, layout, range, names }: RecipeBlock): FilledLine[] {
  if (layout !== "across" || names.length > MOST_NAMES) return [];
  const columns = names.flatMap(({ column, amountAt }) => (amountAt === undefined ? column : []));
  return rangeLines(range.bottom + 1, range.bottom + REACH).flatMap((row) => {
    const placeAt = (at: number) => ({ row, column: columns[at] ?? 0 });
    const sums = columns.filter((column) => isSumOfColumn(sheet, row, column));
    const isOfSums = sums.length * 2 > columns.length;
    return isOfSums ? (filledLine(sheet, { length: columns.length, placeAt }) ?? []) : [];
  });
}
