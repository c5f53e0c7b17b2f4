/** Initial freezing points of fruit, °C. @source ASHRAE Handbook, Refrigeration, table of foods; from memory */
export const fruitFreezingPoints: readonly (readonly [name: string, freezingPointC: number])[] = [
  ["strawberry", -0.78],
  ["blueberry", -1.61],
  ["peach", -0.89],
  ["apricot", -1.06],
  ["blackberry", -0.78],
  ["sweet cherry", -1.78],
];
