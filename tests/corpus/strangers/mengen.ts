import { massOf, withLines, type MadeRecipe } from "../recipes";

/** The same recipe a whole number of times, to about so many kilograms. */
export function batchOf(made: MadeRecipe, kilograms: number): MadeRecipe {
  const times = Math.max(1, Math.round((1000 * kilograms) / massOf(made)));
  const lines = made.lines.map((each) => ({ ...each, grams: each.grams * times }));
  return withLines(made, lines);
}
