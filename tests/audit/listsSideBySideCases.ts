import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Two lists in per cent beside each other, the left one a line longer, with a free column between them. */
const besideEachOther = (last: number, third: number): Rows => [
  ["goes in", "%", null, "goes in", "%"],
  ["Raspberries", 55.9, null, "Orange juice", 82.2],
  ["Water", 20.3, null, "Sucrose", 11.2],
  ["Sucrose", 19.2, null, "Glucose syrup DE 42", third],
  ["Dextrose monohydrate", last, null, "all?", formula("SUM(E2:E4)", 93.4 + third)],
  ["all?", formula("SUM(B2:B5)", 95.4 + last)],
];

/** The shares of a list are its own, not those of the list left of it. */
export const listsSideBySideCases: readonly RuleCase[] = [
  {
    ...{ rule: "total-incomplete", cells: [], what: "two lists in per cent beside each other" },
    rows: besideEachOther(4.6, 6.6),
  },
  {
    ...{ rule: "total-incomplete", cells: ["E2:E4"], what: "the right one of two lists is short" },
    rows: besideEachOther(4.6, 2.6),
  },
  {
    ...{ rule: "total-incomplete", cells: ["B2:B5"], what: "the left one of two lists is short" },
    rows: besideEachOther(1.6, 6.6),
  },
  {
    rule: "total-incomplete",
    what: "shares left of the names and the masses right of them",
    rows: [
      ["%", "Ingredient", "g"],
      [60, "Water", 600],
      [20, "Sucrose", 240],
      [16, "Fructose", 160],
    ],
    cells: ["A2:A4"],
  },
];
