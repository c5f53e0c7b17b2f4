import { put, type CorpusSheet, type Spot } from "../book";
import type { MarkedRecipe } from "../marks";
import { massOf, meets, perHundred, withLines, type MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import type { Place, Said } from "../layouts/parts";

/** The same recipe with some of its ingredients called as this cook calls them. */
export function called(made: MadeRecipe, words: Readonly<Record<string, string>>): MadeRecipe {
  const own = (name: string): string => words[name] ?? name;
  return {
    ...{ ...made, names: made.names.map(own) },
    ...(made.seeded !== undefined && { seeded: made.seeded.map(own) }),
  };
}

/** Forgets a target that rounding has made it miss; a recipe with a mistake in it keeps its own. */
export const stillMet = (made: MadeRecipe): MadeRecipe =>
  made.seeded !== undefined || made.target === null || meets(made, made.target)
    ? made
    : { ...made, target: null };

/** The same recipe for 100 g, the largest share first. */
export function largestFirst(made: MadeRecipe): MadeRecipe {
  const lines = [...made.lines].sort((one, other) => other.grams - one.grams);
  return stillMet(perHundred(withLines(made, lines)));
}

/** The same recipe for a kilogram, in whole grams. */
export function perKilogram(made: MadeRecipe): MadeRecipe {
  const factor = 1000 / massOf(made);
  const grams = made.lines.map((each) => Math.max(2, Math.round(each.grams * factor)));
  const largest = grams.indexOf(Math.max(...grams));
  grams[largest]! += 1000 - grams.reduce((sum, each) => sum + each, 0);
  return stillMet(
    withLines(
      made,
      made.lines.map((each, index) => ({ ...each, grams: grams[index]! })),
    ),
  );
}

/** The cells of one column of rows beside each other. */
export const columnOf = (rows: readonly (readonly Spot[])[], at: number): Spot[] =>
  rows.map((cells) => cells[at]!);

/** Says something of a recipe along a row of labels, each number under its own. */
export function strip(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  list: readonly Said[],
): void {
  let at = column;
  for (const { label, ...plan } of list) {
    const labelSpot = { sheet: sheet.name, row, column: at };
    if (!resultAt(sheet, recipe, labelSpot, { row: row + 1, column: at }, plan)) continue;
    put(sheet, row, at, label);
    at += 1;
  }
}
