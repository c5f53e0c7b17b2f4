import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

const TASK: Rows = [
  ["Amount", "Unit", "Ingredient"],
  [600, "g", "water"],
  [200, "g", "sucrose"],
  [100, "g", "fructose"],
  [formula("SUM(A2:A4)", 900), "g", "Together"],
];

/** 300 g of sugars in 600 g of water: 33.3 % of the mix, 50 g per 100 g of water. */
const solution = (point: number, sugars = 33.3, first = "1e"): Record<string, Rows> => ({
  Task: TASK,
  Solution: [
    ["No.", "asked for", "how it is done", "result", "unit", "marks"],
    [
      ...["1d", "Water of the mix", "each share of water times its amount, then add up"],
      ...[formula('RIME.COMPONENT(Task!C2:C4,Task!A2:A4,"water")', 600), "g", 4],
    ],
    [
      ...[first, "Freezing point of the mix", "0 °C minus the lowering of the freezing point"],
      ...[point, "°C", 1],
    ],
    ["1f", "Sugars of the mix, by mass", "sugar : mix, water among it", sugars, "%", 2],
  ],
});

describe("An answer behind words on how it is found", () => {
  test.each<Tried>([
    { what: "is what was asked for", sheets: solution(-3.99), found: [] },
    {
      what: "is wrong as that",
      sheets: solution(-1.2),
      found: ["result-differs Solution!D3"],
    },
    {
      what: "has the other sign",
      sheets: solution(3.99),
      found: ["freezing-point-sign Solution!D3"],
    },
    {
      what: "is of the water",
      sheets: solution(-3.99, 50),
      found: ["per-water-or-per-mix Solution!D4"],
    },
    {
      what: "stands behind no number but a temperature",
      sheets: solution(-3.99, 33.3, "Freezer"),
      found: ["temperature-units-mixed Solution!A4"],
    },
  ])("$what", expectFound);
});
