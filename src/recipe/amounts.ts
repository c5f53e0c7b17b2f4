import type { Mix } from "./mix";

/** Everything dissolved, g, ethanol counted. */
export const dissolvedGrams = ({ doses }: Mix): number =>
  doses.reduce((sum, { grams }) => sum + grams, 0);

/** Grams of one dissolved substance by name; 0 when there is none. */
export const gramsOfSubstance = ({ doses }: Mix, name: string): number =>
  doses.reduce((sum, { substance, grams }) => (substance.name === name ? sum + grams : sum), 0);
