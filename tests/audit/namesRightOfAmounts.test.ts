import { formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

/** A class's solution on the left, an ice with its names right of its grams beside it, answers below both. */
const lesson = (depression: number, aim: string): Rows => [
  ["Water in the pot (g)", 500, null, null, null, null, "Reward: lemon ice"],
  ["goes in", "grams", "g/mol", "particles", "moles", null, "g", "of"],
  ["sucrose", 20, 342.3, 1, formula("B3/C3*D3", 0.0584), null, 700, "water"],
  ["sodium chloride", 5, 58.44, 2, formula("B4/C4*D4", 0.1711), null, 220, "sugar"],
  ["fructose", 9, 180.16, 1, formula("B5/C5*D5", 0.05), null, 80, "lemon juice"],
  [],
  ["lower by (K)", formula("1.86*SUM(E3:E5)/(B1/1000)", 1.04), null, null, null, null],
  [null, null, null, null, null, null, null, "water from everywhere (g)", 773],
  [null, null, null, null, null, null, null, "below zero (K)", depression],
  [null, null, null, null, null, null, null, "meant as", aim],
];

test("what stands right of words below the names of a list is said of it", () => {
  const differ = (depression: number) =>
    placesOf(findingsOf(lesson(depression, ""))).filter((place) => place.includes("result"));
  expect(differ(1.75)).toEqual([]);
  expect(differ(4.5)).toEqual(["I9 result-differs"]);
});

test("an aim beyond a list is that of the list, not of another one left of it", () => {
  const told = findingsOf(lesson(1.75, "firm bar at −18")).filter(
    ({ rule }) => rule === "misses-its-target",
  );
  expect(told.map(({ message }) => /^"(.*?)" misses/.exec(message)?.[1])).not.toContain("grams");
});
