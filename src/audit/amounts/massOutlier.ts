import type { RecipeName } from "../recipes/recipeBlock";

/** An amount that fits its recipe only when it is so many times as large. */
export interface MassOutlier {
  readonly name: RecipeName;
  readonly factor: number;
  /** Why it cannot be what is meant, as the end of a sentence. */
  readonly why: string;
}

/** An amount of a recipe in grams. */
export interface Line {
  readonly name: RecipeName;
  readonly grams: number;
}

/** Misplaced points, and kilograms for grams, grams for kilograms, ounces for grams. */
export const FACTORS_OF_UNITS = [1000, 0.001, 100, 0.01, 10, 0.1, 28.349523125, 1 / 28.349523125];
