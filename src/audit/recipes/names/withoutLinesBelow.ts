import type { FinderContext } from "../finderContext";
import type { RecipeName } from "../recipeBlock";
import { isSumOfColumn } from "../totals/isSumOfColumn";

/**
 * The names of a list without what is said below its last sum of nothing that anybody knows as an ingredient: how
 * much sugar it has, how many bowls it fills.
 */
export function withoutLinesBelow(
  { sheet, check }: FinderContext,
  names: readonly RecipeName[],
  columns: readonly number[],
  totals: readonly number[],
): readonly RecipeName[] {
  const sums = totals.filter((row) => columns.some((column) => isSumOfColumn(sheet, row, column)));
  const last = sums.at(-1) ?? Number.POSITIVE_INFINITY;
  const below = names.filter(({ row }) => row > last);
  const isKnown = below.some(({ item }) => check(item).kind !== "unknown");
  return isKnown ? names : names.filter(({ row }) => row <= last);
}
