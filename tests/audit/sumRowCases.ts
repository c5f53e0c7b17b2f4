import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const list = (label: string, sum: Rows[number][number]): Rows => [
  ["Ingredient", "Per cent"],
  ["water", 70],
  ["sugar", 25],
  ["lemon juice", 5],
  [],
  [label, sum],
];

const tub = (label: string): Rows => [
  ["Batch", "No. 3", "Lemon ice"],
  ["Dissolved solids (g)"],
  [280],
  [],
  ["Amount", "Ingredient", "Cost (£)"],
  [0.7, "water", 0.1],
  [0.25, "sugar", 0.5],
  [0.05, "lemon juice", 0.4],
  [formula("SUM(A6:A8)", 1), "Total", formula("SUM(C6:C8)", 1)],
  [],
  [label, 110],
  ["Cost of a tub (£)", formula("C9/A9*B11/1000", 0.11)],
];

const pilot = (label: string): Rows => [
  ["Ice:", "Lemon bar"],
  [label, 2000],
  ["Per cent", "Ingredient", "Grams"],
  [70, "water", formula("$B$2*A4/100", 1400)],
  [25, "sugar", formula("$B$2*A5/100", 500)],
  [5, "lemon juice", formula("$B$2*A6/100", 100)],
];

/** Sums below a blank row, by whatever name; inputs below a title. */
export const sumRowCases: readonly RuleCase[] = [
  {
    ...{ rule: "total-incomplete", cells: ["B6"] },
    ...{ what: "a sum after a blank row, without the last line" },
    rows: list("Raw yield", formula("SUM(B2:B3)", 95)),
  },
  {
    ...{ rule: "total-incomplete", cells: ["B6"] },
    ...{ what: "a typed total after a blank row", rows: list("macht zusammen", 107) },
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "a sum of some lines by intent" },
    rows: list("Without the juice", formula("SUM(B2:B3)", 95)),
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "a whole sum after a blank row" },
    rows: list("comes to", formula("SUM(B2:B4)", 100)),
  },
  {
    ...{ rule: "input-without-unit", cells: ["A5"] },
    ...{ what: "amounts below answers that have units of their own", rows: tub("Tub (g)") },
  },
  {
    ...{ rule: "input-without-unit", cells: ["A5", "B11"] },
    ...{ what: "a number that a formula takes for grams", rows: tub("Mix in a tub") },
  },
  {
    ...{ rule: "input-without-unit", cells: ["B2"] },
    ...{ what: "a batch below the title of its recipe", rows: pilot("Pilot batch") },
  },
  {
    ...{ rule: "input-without-unit", cells: [], what: "a batch that says its unit" },
    rows: pilot("Pilot batch (g)"),
  },
  ...[951, 1090].map((total): RuleCase => ({
    rule: "total-incomplete",
    what: `${total} typed as the batch, left of the names with its unit between`,
    rows: [
      ["Menge", "Einheit", "Rohstoff"],
      [544, "g", "Wasser"],
      [302, "g", "Vollmilch"],
      [105, "g", "Zucker"],
      [total, "g", "Ansatz"],
    ],
    cells: total === 951 ? [] : ["A5"],
  })),
];
