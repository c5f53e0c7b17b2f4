import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Puddings in rows, their sum under a word of the class's own, and behind it what was worked out elsewhere. */
const puddings = (summed: string, total: number): Rows => [
  [
    "When",
    "whole milk",
    "sugar",
    "water",
    "All in",
    "Freezing point (°C)",
    "Sugars (% of the mix)",
  ],
  ["Week 1", 500, 120, 80, formula(summed, total), -2.26, 20.8],
  ["Week 2", 0, 150, 500, formula("SUM(B3:D3)", 650), -1.82, 23.1],
];
/** Kilograms in a bucket, the unit of each answer in a cell behind it. */
const bucket = (dissolved: number): Rows => [
  ["Into the bucket", "Weight", ""],
  ["water", 2.4, "kg", null, "Freezing starts", -1.56, "°C"],
  ["sugar", 0.6, "kg", null, "Dissolved in the water", dissolved, "g"],
  ["One tub", formula("SUM(B2:B3)", 3), "kg"],
];
/** Ices in columns, with what is told of each above what was measured of it. */
const ices = (measured: string): Rows => [
  ["Goes in (g)", "Pear ice", "Rum ice"],
  ["water", 500, 600],
  ["sugar", 150, 120],
  ["vodka 40 %", 40, 30],
  ["Batch", 690, 750],
  [],
  ["Card", "Alcohol: adults only, not for drivers.", "Alcohol: adults only, not for drivers."],
  [measured, -14.5, -12.5],
];
/** Ices in rows, the words for the eater in the last column behind other words and a number. */
const friday = (said: string): Rows => [
  ["Rezept", "Zucker", "Vollmilch", "alles (g)", "Truhe abends (°C)", "gedacht als", "Merken"],
  ["Milcheis", 100, 700, formula("SUM(B2:C2)", 800), -18.5, "Kugeln", said],
  ["Süßes Milcheis", 150, 700, formula("SUM(B3:C3)", 850), -16, "Kugeln", said],
];

/** True and false examples of several recipes in one table or under one another. */
export const manyRecipesCases: readonly RuleCase[] = [
  {
    rule: "total-incomplete",
    what: "a share behind a total that has a word of its own",
    rows: puddings("SUM(B2:D2)", 700),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a total with a word of its own that leaves out the water",
    rows: puddings("SUM(B2:C2)", 620),
    cells: ["E2"],
  },
  {
    rule: "result-differs",
    what: "what is dissolved in the water, in grams by the unit behind it",
    rows: bucket(600),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "what is dissolved in the water, too little, in grams by the unit behind it",
    rows: bucket(450),
    cells: ["F3"],
  },
  {
    rule: "result-differs",
    what: "a sentence above the numbers of a row that has a label with a unit",
    rows: ices("In the cool box on arrival (°C)"),
    cells: [],
  },
  {
    rule: "caution-not-named",
    what: "allergens told by a word of one's own, a number in the row",
    rows: friday("drin: Milch."),
    cells: [],
  },
  {
    rule: "caution-not-named",
    what: "no allergens in a column of remarks",
    rows: friday("drin: nichts mehr"),
    cells: ["A1:G3"],
  },
];
