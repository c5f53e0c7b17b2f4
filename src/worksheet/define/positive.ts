import type { Argument } from "./argument";
import { number } from "./number";

const MOST = 1e9;

/** A number above 0. */
export const positive = (
  description: string,
  unit = "",
  options?: { readonly default: number },
): Argument<number> => number(description, { from: 0, to: MOST, above: true, unit }, options);

/** A number from 0 up. */
export const notNegative = (
  description: string,
  unit = "",
  options?: { readonly default: number },
): Argument<number> => number(description, { from: 0, to: MOST, unit }, options);
