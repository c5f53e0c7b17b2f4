import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Baths one to a row, their sum under a word of its own. */
const BATHS = (saltOfFirst: number, point: number): Rows => [
  ["Bath", "Water", "Salt", "Brine", "Freezing point (°C)"],
  ["1", 3500, saltOfFirst, formula("SUM(B2:C2)", 3500 + saltOfFirst), point],
  ["2", 3000, 269, formula("SUM(B3:C3)", 3269), -5.26],
  ["3", 6000, 677, formula("SUM(B4:C4)", 6677), -6.7],
  ["4", 5000, 765, formula("SUM(B5:C5)", 5765), -9.32],
  ["5", 2000, 393, formula("SUM(B6:C6)", 2393), -12.39],
];

/** Doubles in every second row, words between. */
const HINTS = (third: ReturnType<typeof formula> | number): Rows => [
  ["Task", "Moles a", "Twice"],
  ["a)", 1, formula("2*B2", 2)],
  ["Think first.", null, null],
  ["b)", 2, formula("2*B4", 4)],
  ["Think again.", null, null],
  ["c)", 3, third],
  ["Then ask.", null, null],
  ["d)", 4, formula("2*B8", 8)],
];

/** Two versions of a recipe with their names between. */
const VERSIONS = (point: number): Rows => [
  ["before", "Ingredient", "after", "Change"],
  [628, "Water", 618, formula("C2-A2", -10)],
  [182, "Sugar", 187, formula("C3-A3", 5)],
  [134, "Lemon juice", 139, formula("C4-A4", 5)],
  [formula("SUM(A2:A4)", 944), "Total", formula("SUM(C2:C4)", 944), null],
  [],
  [point, "Freezing point (°C)", -1.63, null],
];

/** Each solute in the water that is said once. */
const FLASKS = (depression: number): Rows => [
  ["Water in every flask (g)", 100],
  ["Kf (K kg/mol)", 1.86],
  [],
  ["Solute", "M (g/mol)", "i", "Weighed in (g)", "n (mol)", "Depression (K)"],
  ["fructose", 180.16, 1, 7, formula("D5/B5", 0.0389), 0.723],
  ["sucrose", 342.3, 1, 10, formula("D6/B6", 0.0292), depression],
];

/** Recipes and solutions that lie otherwise than a list with its amounts to the right. */
export const arrangementCases: readonly RuleCase[] = [
  {
    rule: "result-differs",
    what: "the sum of a bath is no third ingredient",
    rows: BATHS(178, -2.95),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "a bath's freezing point that is another's",
    rows: BATHS(178, -6.7),
    cells: ["E2"],
  },
  {
    rule: "mass-units-mixed",
    what: "baths from weak to strong",
    rows: BATHS(80, -1.33),
    cells: [],
  },
  {
    rule: "formula-overwritten",
    what: "a number among formulas in every second row",
    rows: HINTS(6),
    cells: ["C6"],
  },
  {
    rule: "inconsistent-formula",
    what: "one formula in every second row",
    rows: HINTS(formula("2*B6", 6)),
    cells: [],
  },
  {
    rule: "inconsistent-formula",
    what: "another formula among those in every second row",
    rows: HINTS(formula("3*B6", 9)),
    cells: ["C6"],
  },
  {
    rule: "result-differs",
    what: "the version left of the names, right",
    rows: VERSIONS(-1.57),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "the version left of the names, wrong",
    rows: VERSIONS(-3.1),
    cells: ["A7"],
  },
  {
    rule: "result-differs",
    what: "solutes in the same water, each for itself",
    rows: FLASKS(0.543),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "one of several solutes in the same water",
    rows: FLASKS(1.9),
    cells: ["F6"],
  },
  {
    rule: "mass-units-mixed",
    what: "cups left of the names, grams right of them",
    rows: [
      ["Qty", "Measure", "Ingredient", ""],
      [1.75, "cup", "water", 413],
      [1.25, "cup", "sugar", 250],
      [2, "tbsp", "lemon juice", 30],
    ],
    cells: [],
  },
  {
    rule: "result-differs",
    what: "a formula over the shares of a list in grams",
    rows: [
      ["% by mass", "g", "Ingredient"],
      [70, formula("A2*20", 1400), "water", null, null],
      [25, formula("A3*20", 500), "sugar", "Freezing point (°C)", formula("X(A2:A4)", -9)],
      [5, formula("A4*20", 100), "glucose", null, null],
    ],
    cells: ["E3"],
  },
];
