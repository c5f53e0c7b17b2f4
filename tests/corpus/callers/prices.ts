import type { Chance } from "../random";
import type { MadeRecipe } from "../recipes";

type Rates = readonly (readonly [RegExp, from: number, to: number])[];

const POUNDS: Rates = [
  [/^water$/, 0, 0],
  [/^(sugar|sucrose|salt|dextrose)/, 0.8, 2.6],
  [/milk$|syrup|coffee/, 1, 3.2],
  [/nuts|pistachios|vodka|inulin|powder/, 9, 22],
  [/./, 2.4, 8],
];
const EUROS: Rates = [
  [/^water$/, 0.01, 0.01],
  [/^(sugar|sucrose|salt|dextrose)/, 0.9, 2.4],
  [/milk$|syrup|coffee/, 1.1, 2.9],
  [/nuts|pistachios|vodka|inulin|powder/, 8, 24],
  [/./, 2.2, 7.5],
];

/** What a kilogram of a recipe's line costs. */
export type PriceOf = (made: MadeRecipe, index: number) => number;

/** One price a kilogram for each thing, the same wherever it is bought for in a book. */
function listOf(random: Chance, rates: Rates): PriceOf {
  const known = new Map<string, number>();
  return ({ lines }, index) => {
    const { en } = lines[index]!;
    const [, from, to] = rates.find(([words]) => words.test(en))!;
    const price = known.get(en) ?? Number(random.between(from, to).toFixed(2));
    known.set(en, price);
    return price;
  };
}

export const pounds = (random: Chance): PriceOf => listOf(random, POUNDS);
export const euros = (random: Chance): PriceOf => listOf(random, EUROS);
