import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";
import { expectFound } from "./tried";

// 150 g and 200 g of sucrose in 850 g and 800 g of water: the first freezes 1.04 K below it, the second 1.5 K.

const LEFT = [850, 150, -1.04] as const;
const RIGHT = [800, 200, -1.5] as const;

/** Two lists beside each other, the answers of the right one a row higher than those of the left one. */
const abreast = (right = RIGHT[2] as number): Rows => [
  ["Plain", "g", null, "Sweet", "g"],
  ["water", LEFT[0], null, "water", RIGHT[0]],
  ["sucrose", LEFT[1], null, "sucrose", RIGHT[1]],
  ["all", formula("SUM(B2:B3)", 1000), null, "all", formula("SUM(E2:E3)", 1000)],
  [null, null, null, "Sets at (°C)", "Lowered by (K)"],
  ["Sets at (°C)", "Lowered by (K)", null, right, -right],
  [LEFT[2], -LEFT[2]],
];

test("below the last of some headings stands its number, whatever stands right of it", () => {
  const { results } = auditContext(bookOf({ Sheet1: abreast() }), []);
  const found = results.map(({ row, column, role }) => `${role} ${row + 1},${column + 1}`);
  expect(found.sort()).toEqual([
    ...["depression 6,5", "depression 7,2"],
    ...["freezing point 6,4", "freezing point 7,1"],
  ]);
});

test("the right list's answers are judged by its own amounts", () => {
  expectFound({ what: "as they should be", sheets: { Ices: abreast() }, found: [] });
  const found = ["result-differs Ices!D6", "result-differs Ices!E6"];
  expectFound({ what: "those of a stronger mix", sheets: { Ices: abreast(-2.6) }, found });
});
