import type { Chance } from "../random";

/** What a kilogram costs a small buyer, about. */
const PER_KG: readonly (readonly [RegExp, number])[] = [
  [/^water/, 0.2],
  [/coffee/, 0.9],
  [/monohydrate|fructose|inulin/, 4.2],
  [/sugar|sucrose/, 1.1],
  [/syrup/, 3.1],
  [/powder|cocoa/, 8.4],
  [/^(whole|full-fat) milk|^full cream/, 1.15],
  [/cream/, 5.6],
  [/yogurt/, 2.6],
  [/honey/, 9.5],
  [/salt/, 0.7],
  [/vodka|rum|gin/, 17],
  [/pistachios/, 24],
  [/nuts|pecans|walnuts|coconut/, 11.5],
  [/juice/, 3.2],
  [/yolk/, 7.8],
];

/** A price for a kilogram, in whole pence. */
export function priceFor(random: Chance, name: string): number {
  const usual = PER_KG.find(([of]) => of.test(name))?.[1] ?? 4.9;
  return Math.round(100 * usual * random.between(0.88, 1.15)) / 100;
}
