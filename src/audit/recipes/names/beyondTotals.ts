import type { FinderContext } from "../finderContext";
import { isWater } from "../forms/isWater";
import { plainWords } from "../headings/plainWords";
import type { RecipeName } from "../recipeBlock";

const isSameItem = (one: RecipeName, other: RecipeName): boolean =>
  plainWords(one.item) === plainWords(other.item);

/**
 * Columns behind the total of a table of recipes that nobody knows as an ingredient, like "Sugars (% m/m)", that say
 * once more what stands before it, or how much water there is: what is said of the whole mix, although the heading
 * would do for a name.
 */
export function beyondTotals(
  { check }: FinderContext,
  names: readonly RecipeName[],
  totals: readonly number[],
): readonly number[] {
  const last = Math.max(-1, ...totals);
  const beyond = names.filter(({ column }) => column > last);
  const before = names.filter((name) => !beyond.includes(name));
  if (last < 0 || before.length < 2) return [];
  const isOfMix = (name: RecipeName) =>
    check(name.item).kind === "unknown" ||
    isWater(name.item) ||
    before.some((one) => isSameItem(one, name));
  return beyond.filter(isOfMix).map(({ column }) => column);
}
