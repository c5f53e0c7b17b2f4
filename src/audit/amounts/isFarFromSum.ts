import { sumOf, type Totalled } from "./totalledLines";

/** A typed number so far from the sum is another thing: how many pieces it makes, kilograms below grams. */
const [LEAST, MOST] = [0.4, 2.5];

/** Whether a typed number is too far from the sum to be meant as it. */
export function isFarFromSum({ formula, stored, summands }: Totalled): boolean {
  const sum = sumOf(summands);
  return formula === undefined && (stored < LEAST * sum || stored > MOST * sum);
}
