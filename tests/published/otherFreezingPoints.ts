/**
 * Initial freezing points of further foods, °C: two that are met, five that are not, since the print is
 * warmer than these sugars and acids allow.
 * @source ASHRAE Handbook, Refrigeration, table of foods; from memory
 */
export const otherFreezingPoints: readonly (readonly [name: string, freezingPointC: number])[] = [
  ["grape", -2.11],
  ["evaporated milk", -1.39],
  ["raspberry", -0.61],
  ["pineapple", -1],
  ["orange juice", -0.78],
  ["apple", -1.11],
  ["mango", -0.94],
];
