import type { Cell, Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";
import type { RecipeInGrams } from "./toGrams";

/** A recipe with the own ingredients that count for it. */
export interface RecipeMix extends RecipeInGrams {
  readonly title: string;
  readonly own: Matrix | null;
}

/** Rows of a recipe whose name and amount are filled, as numbers. */
export interface MixRow {
  readonly name: string;
  readonly grams: number;
}

/** What a recipe function answers about a mix. `args` stand between the recipe and its own ingredients. */
export const askMix = (
  { items, grams, own }: Omit<RecipeMix, "title">,
  name: string,
  ...args: readonly (Cell | Matrix)[]
): Matrix => callFunction(name, items, grams, ...args, own);

export const firstNumber = (answer: Matrix): number | null => {
  const cell = answer[0]?.[0];
  return typeof cell === "number" ? cell : null;
};

/** The rows that count, totals left out: one by one. */
export const rowsOf = ({ items, grams }: RecipeInGrams): readonly MixRow[] =>
  items.flatMap(([name = null], row) => {
    const amount = grams[row]?.[0];
    return typeof name === "string" && typeof amount === "number" && amount > 0
      ? [{ name, grams: amount }]
      : [];
  });

/** The same ingredients in the same amounts, whatever they are called together. */
export const isSameMix = (one: RecipeInGrams, other: RecipeInGrams): boolean =>
  JSON.stringify([one.items, one.grams]) === JSON.stringify([other.items, other.grams]);
