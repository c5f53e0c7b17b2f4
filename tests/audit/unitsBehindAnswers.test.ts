import type { Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

/** A list with its properties beside it: label, number, unit. The ice is stated far too low. */
const properties = (unit: string): Rows => [
  ["Ingredient", "% w/w", null, "Property", "Value", "Unit"],
  ["water", 60, null, "Storage temperature", -18, "°C"],
  ["whole milk", 20, null, "Ice in storage", 20, unit],
  ["sucrose", 20],
];

test.each(["% of the mix", "%", "% der Masse"])("the unit %p makes of ice a share", (unit) => {
  const wrong = findingsOf(properties(unit)).filter(({ cell }) => cell === "E3");
  expect(placesOf(wrong)).toEqual(["E3 result-differs"]);
});

test.each(["boxes", "kg", ""])("the unit %p does not", (unit) => {
  expect(findingsOf(properties(unit)).filter(({ cell }) => cell === "E3")).toEqual([]);
});
