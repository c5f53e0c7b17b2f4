import type { Ingredient } from "./ingredient";

/** Every ingredient of the catalogue, by group. */
export const ingredients: readonly Ingredient[] = [];
