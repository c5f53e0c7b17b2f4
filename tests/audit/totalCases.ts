import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST: Rows = [
  ["Ingredient", "Amount (g)", "Cost €"],
  ["Water", 500, 0],
  ["Sucrose", 150, 0.2],
  ["Guar gum", 2, 0.1],
];
const listed = (...more: Rows): Rows => [...LIST, ...more];
const twoStages = (total: Rows[number]): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Subtotal", formula("SUM(B2:B3)", 650)],
  ["Lemon juice", 60],
  ["Fructose", 40],
  total,
];
const shares = (last: number, ...more: Rows): Rows => [
  ["Ingredient", "Amount (g)", "Share %"],
  ["Water", 700, 70],
  ["Sucrose", 200, 20],
  ["Lemon juice", 100, last],
  ...more,
];

/** True and false examples of totals and shares. */
export const totalCases: readonly RuleCase[] = [
  {
    rule: "total-incomplete",
    what: "a sum that leaves out two grams of gum",
    rows: listed(["Total", formula("SUM(B2:B3)", 650), null]),
    cells: ["B5"],
  },
  {
    rule: "total-incomplete",
    what: "a sum of costs that leaves out a row",
    rows: listed(["Total", formula("SUM(B2:B4)", 652), formula("SUM(C2:C3)", 0.2)]),
    cells: ["C5"],
  },
  {
    rule: "total-incomplete",
    what: "whole sums of amounts and costs, and a typed total of costs with the rent in it",
    rows: listed(["Total", formula("SUM(B2:B4)", 652), 4.5]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a total that counts a subtotal again",
    rows: twoStages(["Total", formula("SUM(B2:B6)", 1400)]),
    cells: ["B7"],
  },
  {
    rule: "total-incomplete",
    what: "a total of a subtotal and what follows",
    rows: twoStages(["Total", formula("B4+SUM(B5:B6)", 750)]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a total of the second stage",
    rows: twoStages(["Subtotal", formula("SUM(B5:B6)", 100)]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a typed total that counts an amount typed as text",
    rows: listed(["Lemon juice", "12,5", 0], ["Total", 664.5, null]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "shares beside grams that come to 97 %",
    rows: shares(7),
    cells: ["C2:C4"],
  },
  {
    rule: "total-incomplete",
    what: "shares whose total says 97",
    rows: [
      ["Ingredient", "Share %"],
      ["Water", 70],
      ["Sucrose", 20],
      ["Lemon juice", 7],
      ["Total", formula("SUM(B2:B4)", 97)],
    ],
    cells: ["B2:B4"],
  },
  {
    rule: "total-incomplete",
    what: "shares beside grams that come to 100 %",
    rows: shares(10, ["Total", 1000, 100]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "the moles of the solutes, without the water's",
    rows: [
      ["Ingredient", "g", "Moles"],
      ["Water", 500, 27.75],
      ["Sucrose", 34.23, 0.1],
      ["Glucose", 18.02, 0.1],
      ["Total", formula("SUM(B2:B4)", 552.25), formula("SUM(C3:C4)", 0.2)],
    ],
    cells: [],
  },
  {
    rule: "abv-as-mass",
    what: "40 % of the grams by a formula",
    rows: [
      ["Ingredient", "g", "ABV %", "Ethanol g"],
      ["Water", 500, null, null],
      ["Sucrose", 100, null, null],
      ["Spirit 40 % vol", 50, 40, formula("B4*C4/100", 20)],
    ],
    cells: ["D4"],
  },
  {
    rule: "constant-of-a-solute",
    what: "moles of dextrose monohydrate by a formula with the anhydrous molar mass",
    rows: [
      ["Ingredient", "g", "Moles"],
      ["Water", 500, null],
      ["Sucrose", 100, formula("B3/342.3", 0.2921)],
      ["Dextrose monohydrate", 50, formula("B4/180.16", 0.2775)],
    ],
    cells: ["C4"],
  },
];
