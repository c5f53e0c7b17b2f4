import type { FinderContext } from "../finderContext";
import type { Role } from "../headings/headerRole";
import type { RecipeName } from "../recipeBlock";

const OF_MIX = new Set<Role>([
  ...(["molality", "depression", "freezing point", "ice fraction"] as const),
  ...(["measured", "temperature"] as const),
]);

/**
 * Columns under unknown words behind what a table says of its mixes, after the last known ingredient, like the marks
 * of a class: no ingredient stands there, unless a total behind it may count it.
 */
export function beyondAnswers(
  { check }: FinderContext,
  names: readonly RecipeName[],
  roles: ReadonlyMap<number, Role>,
  totals: readonly number[],
): readonly number[] {
  const known = names.filter(({ item }) => check(item).kind !== "unknown");
  const last = Math.max(...known.map(({ column }) => column), ...totals);
  const answers = [...roles].filter(([column, role]) => column > last && OF_MIX.has(role));
  const first = Math.min(...answers.map(([column]) => column));
  return known.length < 2
    ? []
    : names.map(({ column }) => column).filter((column) => column > last && column > first);
}
