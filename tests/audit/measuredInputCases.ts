import { formula } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST = [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Total", formula("SUM(B1:B2)", 650)],
] as const;

/** What is measured, not counted, by its fraction or place. */
export const measuredInputCases: readonly RuleCase[] = [
  {
    rule: "input-without-unit",
    what: "a number with a fraction, by which something is divided",
    rows: [...LIST, [], ["Comes out", 3.2], ["Price (£)", formula("B4/B6", 203.1)]],
    cells: ["B6"],
  },
  {
    rule: "input-without-unit",
    what: "the size of a batch before another label with its unit",
    rows: [
      ...LIST,
      [],
      ["Batch size", 600, null, "Batch (kg)", formula("B4/1000", 0.65)],
      ["Rest", formula("B6-B4", -50)],
    ],
    cells: ["B6"],
  },
  {
    rule: "input-without-unit",
    what: "prices of a year, by which amounts without a unit are multiplied",
    rows: [
      ["Stuff", "Amount", "spring", "summer", "spring", "summer"],
      ["Water", 500, 1, 2, formula("B2*C2", 500), formula("B2*D2", 1000)],
      ["Sucrose", 150, 3, 4, formula("B3*C3", 450), formula("B3*D3", 600)],
    ],
    cells: ["B1"],
  },
];
