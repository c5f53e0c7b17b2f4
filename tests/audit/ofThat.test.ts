import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import { rulesOn } from "./tried";

const iceOf = (basis: string) =>
  callFunction(
    "ICEFRACTION",
    [["Water"], ["Sucrose"]],
    [[800], [200]],
    -10,
    basis,
  )[0]![0] as number;

/** A fifth of sucrose at −10 °C, and how much of it is ice. */
const mixWith = (above: string, label: string, basis: string): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 800],
  ["Sucrose", 200],
  ["Total", formula("SUM(B2:B3)", 1000)],
  [],
  ["Freezer (°C)", -10],
  [above, above.includes("ater") || above.includes("asser") ? 800 : 200],
  [label, formula(`RIME.ICEFRACTION(A2:A3,B2:B3,B6,"${basis}")`, iceOf(basis))],
];

const toldOf = (rows: Rows) => rulesOn({ Ice: rows }).includes("ice-of-water-or-mix");

test.each([
  ["Water in it, g", "of that frozen in the freezer"],
  ["Water in it, g", "Of which ice, once in the freezer"],
  ["Wasser darin, g", "davon Eis in der Truhe"],
])("below “%s”, “%s” is a share of the water", (above, label) => {
  expect(toldOf(mixWith(above, label, "mix"))).toBe(true);
  expect(toldOf(mixWith(above, label, "water"))).toBe(false);
});

test("below anything but water it says of nothing that is known", () => {
  expect(toldOf(mixWith("Sugar in it, g", "of that frozen", "mix"))).toBe(false);
});
