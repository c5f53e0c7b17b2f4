import { auditContext } from "../../src/audit/context";
import { bookOf, type Rows } from "./bookOf";

const unitsOf = (...rows: Rows) =>
  auditContext(bookOf({ Ice: rows }), []).blocks.flatMap(({ recipes }) =>
    recipes.map(({ unit, unitAssumed }) => (unitAssumed ? null : unit)),
  );

/** A list laid on its side: what is a column of units in a list down is a row of them. */
const onItsSide = (...rows: Rows): Rows => [
  ["Ingredient", "water", "sugar", "lemon juice", "Total"],
  ...rows,
  ["Price (EUR/kg)", 0.1, 1.2, 6],
];

test.each<[what: string, amounts: Rows[number], units: Rows[number], unit: string | null]>([
  ["in kg", ["Amount", 0.6, 0.2, 0.05, 0.85], ["Unit", "kg", "kg", "kg"], "kg"],
  ["in German", ["Menge", 600, 200, 50, 850], ["Einheit", "g", "g", "g"], "g"],
  ["of several units", ["Amount", 600, 200, 0.05], ["Unit", "g", "g", "kg"], null],
  ["with a gap", ["Amount", 600, 200, 50, 850], ["Unit", "g", null, "g"], null],
  ["of other words", ["Amount", 600, 200, 50, 850], ["From", "tap", "sack", "jar"], null],
])(
  "a row of units %s is the unit of the amounts above it, if of all",
  (_, amounts, units, unit) => {
    expect(unitsOf(...onItsSide(amounts, units))).toEqual([unit]);
  },
);

test("a row of units may stand above the amounts", () => {
  expect(unitsOf(...onItsSide(["Unit", "kg", "kg", "kg"], ["Amount", 0.6, 0.2, 0.05]))).toEqual([
    "kg",
  ]);
});

test("a remark among the names, with no amount, needs no unit", () => {
  const names = ["Ingredient", "water", "sugar", "→ stir slowly", "lemon juice", "Total"];
  const rows = [names, ["Amount", 600, 200, null, 50, 850], ["Unit", "g", "g", null, "g", "g"]];
  expect(unitsOf(...rows)).toEqual(["g"]);
});

test.each<[what: string, rows: Rows, unit: string | null]>([
  [
    "in a cell of its own left of them, below a title",
    [
      ["Strawberry ice", "Ingredient", "strawberries", "sugar", "water", "Total"],
      [null, "g", 524, 136, 296, 956],
    ],
    "g",
  ],
  [
    "behind their label, beyond a free column",
    [
      ["Ice", "Ingredient", null, "strawberries", "sugar", "water", "Total"],
      [null, "Amount", "kg", 0.524, 0.136, 0.296, 0.956],
    ],
    "kg",
  ],
  [
    "in their label behind the name of the recipe and what it is in all",
    [
      ["House pop:", null, "Whole jug", "In the jug", "strawberries", "sugar", "water"],
      ["Red", null, 956, "Poured (g)", 524, 136, 296],
    ],
    "g",
  ],
  [
    "that of fractions by what they come to",
    [
      ["Formula", "whole milk", "sugar", "water", "Sum"],
      ["Mass fraction", 0.6, 0.15, 0.25, 1],
    ],
    "fraction",
  ],
  [
    "not of what stands left of a number",
    [
      ["Tray", null, 3, null, "strawberries", "sugar", "water"],
      ["kg", null, 3, null, 524, 136, 296],
    ],
    null,
  ],
])("amounts in a row have the unit %s", (_, rows, unit) => {
  expect(unitsOf(...rows)).toEqual([unit]);
});
