import type { FinderContext } from "../finderContext";
import type { RecipeName } from "../recipeBlock";

/**
 * Columns behind the total of a table of recipes that nobody knows as an ingredient, like "Sugars (% m/m)": what is
 * said of the whole mix, although the heading would do for a name.
 */
export function beyondTotals(
  { check }: FinderContext,
  names: readonly RecipeName[],
  totals: readonly number[],
): readonly number[] {
  const last = Math.max(-1, ...totals);
  const beyond = names.filter(({ column }) => column > last);
  if (last < 0 || names.length - beyond.length < 2) return [];
  return beyond.filter(({ item }) => check(item).kind === "unknown").map(({ column }) => column);
}
