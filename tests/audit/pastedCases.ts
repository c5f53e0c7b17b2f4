import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LINK = formula('HYPERLINK("https://example.org/offer","price list")', "price list");
const beside = (...links: Rows[number]): Rows => [
  ["No.", "Amount (g)", "What goes in", "Remarks", null, null, null, links[0] ?? null],
  [1, 311, "whole milk", null, null, "Freezing point (°C)", -2.4, links[1] ?? null],
  [2, 74, "cream 35 % fat", "check date", null, null, null, links[2] ?? null],
  [3, 53, "honey", null, null, null, null, links[3] ?? null],
  [4, 29, "sugar", "sieved"],
];

/** True and false examples of what was pasted into a sheet. */
export const pastedCases: readonly RuleCase[] = [
  {
    rule: "formula-reaches-out",
    what: "a link that stands alone at the end of a line, beyond the answers",
    rows: beside(null, null, LINK),
    cells: ["H3"],
  },
  {
    rule: "formula-reaches-out",
    what: "a column of links to suppliers beyond the answers",
    rows: beside("Supplier", LINK, LINK, LINK),
    cells: [],
  },
  {
    rule: "formula-reaches-out",
    what: "a link among the remarks, where the amounts stand left of the names",
    rows: beside().map((row, at) => (at === 2 ? [...row.slice(0, 4), LINK] : row)),
    cells: ["E3"],
  },
  {
    rule: "formula-overwritten",
    what: "a typed 0 in a column whose formulas give 0 in other lines",
    rows: [
      ["Ingredient", "g", "%", "g"],
      ["water", 500, formula("B2/$B$8*100", 50), 400],
      ["sucrose", 300, formula("B3/$B$8*100", 30), 100],
      ["honey", null, formula("B4/$B$8*100", 0), 60],
      ["salt", null, 0, 2],
      ["fructose", null, formula("B6/$B$8*100", 0), 30],
      ["lemon juice", 200, formula("B7/$B$8*100", 20), 40],
      ["Sum", formula("SUM(B2:B7)", 1000), formula("SUM(C2:C7)", 100), formula("SUM(D2:D7)", 632)],
    ],
    cells: ["C5"],
  },
];
