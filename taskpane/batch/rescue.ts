import type { Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";
import type { MixRow } from "../bowl/askMix";

/** What has to be added so that the bowl has the recipe's proportions again. */
export interface Restored {
  /** The whole batch is then so many times the recipe. */
  readonly factor: number;
  readonly additions: readonly MixRow[];
}

/** The smallest batch in the recipe's proportions that holds what is in the bowl; a recipe's zero rows are left out. */
export function restoreProportions(recipe: readonly MixRow[], inBowl: readonly MixRow[]): Restored {
  const bowlOf = (name: string) => inBowl.find((row) => row.name === name)?.grams ?? 0;
  const factor = Math.max(0, ...recipe.map(({ name, grams }) => bowlOf(name) / grams));
  const additions = recipe.flatMap(({ name, grams }) => {
    const missing = factor * grams - bowlOf(name);
    return missing > 1e-9 * grams ? [{ name, grams: missing }] : [];
  });
  return { factor, additions };
}

/** One ingredient whose addition brings the freezing point back. */
export interface OneAddition extends MixRow {
  readonly freezingPointC: number;
}

/** The amount of one ingredient with which the bowl freezes where the recipe does; none where there is no such. */
function additionOf(
  name: string,
  inBowl: readonly MixRow[],
  recipePointC: number,
  own: Matrix | null,
): readonly OneAddition[] {
  const rows = inBowl.some((row) => row.name === name) ? inBowl : [...inBowl, { name, grams: 0 }];
  const items = rows.map((row) => [row.name]);
  const grams = rows.map((row) => [row.grams]);
  const asked = [items, grams, name, "freezing point", recipePointC, null, own];
  const total = callFunction("AMOUNTFOR", ...asked)[0]?.[0];
  const now = rows.find((row) => row.name === name)?.grams ?? 0;
  return typeof total === "number" && total > now
    ? [{ name, grams: total - now, freezingPointC: recipePointC }]
    : [];
}

/**
 * For each ingredient that may be added, the amount with which the bowl freezes where the recipe does. Those
 * of which there already is too much, or that cannot do it, are left out. Smallest first. Stops after each
 * ingredient, and tells how many are done.
 */
export function* singleAdditions(
  inBowl: readonly MixRow[],
  recipePointC: number,
  mayAdd: readonly string[],
  own: Matrix | null,
): Generator<number, readonly OneAddition[], undefined> {
  const found: OneAddition[] = [];
  for (const [at, name] of mayAdd.entries()) {
    found.push(...additionOf(name, inBowl, recipePointC, own));
    yield at + 1;
  }
  return found.sort((one, other) => one.grams - other.grams);
}
