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
