import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

type Made = ReturnType<typeof formula> | number;

/** What one kettle takes along a row, and below it what all of them do. */
const kettles = (sugar: Made): Rows => [
  ["Kettles", 5],
  [],
  ["Peach ice", "Water", "Sugar", "Lemon juice", "Salt", "Total"],
  ["one kettle (g)", 600, 150, 50, 2, formula("SUM(B4:E4)", 802)],
  [
    "the whole camp (g)",
    ...[formula("B4*$B$1", 3000), sugar, formula("D4*$B$1", 250), formula("E4*$B$1", 10)],
    formula("SUM(B5:E5)", 4010),
  ],
];

/** Two sizes of one mix, of which one line is what is left. */
const filledUp: Rows = [
  ["Peach ice", "Water", "Sugar", "Lemon juice", "Salt", "Total"],
  ["one kettle (g)", 600, 150, 50, formula("802-SUM(B2:D2)", 2), formula("SUM(B2:E2)", 802)],
  ["a small one (g)", 300, 75, 25, formula("401-SUM(B3:D3)", 1), formula("SUM(B3:E3)", 401)],
];

/** Rows of amounts that are filled along their ingredients. */
export const kettleCases: readonly RuleCase[] = [
  {
    ...{ rule: "formula-overwritten", cells: ["C5"], what: "an amount typed along a filled row" },
    rows: kettles(750),
  },
  {
    ...{ rule: "inconsistent-formula", cells: ["C5"], what: "an amount added to the kettles" },
    rows: kettles(formula("C4+$B$1", 155)),
  },
  {
    ...{ rule: "reference-slips", cells: ["C5"], what: "a $ that is missing along a filled row" },
    rows: kettles(formula("C4*B1", 750)),
  },
  ...["formula-overwritten", "inconsistent-formula", "reference-slips"].flatMap(
    (rule): RuleCase[] => [
      {
        ...{ rule, cells: [], what: "a row that is filled along its ingredients" },
        rows: kettles(formula("C4*$B$1", 750)),
      },
      { ...{ rule, cells: [], what: "what is left of a typed row" }, rows: filledUp },
    ],
  ),
];
