import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

const SYRUP: Rows = [
  ["Ingredient", "Amount (g)"],
  ["Water", 850],
  ["Sucrose", 150],
];
const ITEMS = [["water"], ["sucrose"]];
const GRAMS = [[850], [150]];
const POINT_C = Number(callFunction("FREEZINGPOINT", ITEMS, GRAMS)[0]?.[0]);
const ICE = (basis: "water" | "mix") =>
  Number(callFunction("ICEFRACTION", ITEMS, GRAMS, -13, basis)[0]?.[0]);

const answersOf = (stated: number): Tried["sheets"] => ({
  Plan: SYRUP,
  Answers: [
    ["Freezing point (°C)", stated],
    ["Sugars (% of the mix)", formula("100*Plan!B3/SUM(Plan!B2:B3)", 15)],
  ],
});
/** Two cards side by side, each with its answers above its list. */
const cardsOf = (first: number): Tried["sheets"] => ({
  Week: [
    ["Monday", "Syrup", null, "Tuesday", "Syrup again"],
    [
      "Into the tub (g)",
      formula("SUM(B6:B7)", 1000),
      null,
      "Into the tub (g)",
      formula("SUM(E6:E7)", 1000),
    ],
    ["Freezing point (°C)", first, null, "Freezing point (°C)", POINT_C],
    [],
    ["what", "g", null, "what", "g"],
    ["water", 850, null, "water", 850],
    ["sugar", 150, null, "sugar", 150],
  ],
});
const served = (percent: number): Tried["sheets"] => ({
  Ice: [
    ["Morning (°C)", -18],
    ["Evening (°C)", -20],
    ["Handed out, serving at (°C)", -13],
    [],
    ...SYRUP,
    ["Share of the water frozen", percent],
  ],
});
const stages = (second: string, sum: number): Tried["sheets"] => ({
  Ice: [
    ...SYRUP,
    ["Subtotal", formula("SUM(B2:B3)", 1000)],
    ["Lemon juice", 60],
    ["Fructose", 40],
    ["Subtotal", formula(second, sum)],
    ["Batch, all told", formula("B4+B7", 1000 + sum)],
  ],
});

describe("An answer or a total finds its recipe", () => {
  test.each<Tried>([
    { what: "typed, on another sheet, right", sheets: answersOf(POINT_C), found: [] },
    {
      what: "typed, on another sheet beside formulas that read the recipe, wrong",
      sheets: answersOf(POINT_C - 1.5),
      found: ["result-differs Answers!B1"],
    },
    {
      what: "below another list, of which nobody knows what it is",
      sheets: {
        Plan: [
          ...SYRUP,
          [],
          ["On top", "Amount (g)"],
          ["Neighbour's cherry sauce", 90],
          ["Market berry glaze", 80],
          ["Freezing point of the top (°C)", -3.6],
        ],
      },
      found: [],
    },
    { what: "above each of two lists side by side, right", sheets: cardsOf(POINT_C), found: [] },
    {
      what: "above each of two lists side by side, the first wrong",
      sheets: cardsOf(POINT_C - 1.5),
      found: ["result-differs Week!B3"],
    },
    {
      what: "in °F among the evenings of five days",
      sheets: { Log: [["Core (°C)", -16, -14, 5, -12, -13]] },
      found: ["temperature-units-mixed Log!D1"],
    },
    {
      what: "warmer than the others, but in °C",
      sheets: { Log: [["Core (°C)", -16, -14, -3, -12, -13]] },
      found: [],
    },
    {
      what: "ice at the one temperature of serving among others",
      sheets: served(100 * ICE("water")),
      found: [],
    },
    {
      what: "ice of the mix there",
      sheets: served(100 * ICE("mix")),
      found: ["ice-of-water-or-mix Ice!B8", "result-differs Ice!B8"],
    },
    { what: "a sum of subtotals", sheets: stages("SUM(B5:B6)", 100), found: [] },
    {
      what: "a subtotal too small, told once",
      sheets: stages("SUM(B5:B5)", 60),
      found: ["total-incomplete Ice!B7"],
    },
    {
      what: "a sum under a blank row that leaves out a row",
      sheets: {
        Ice: [...SYRUP, ["Lemon juice", 60], [], ["Batch (g)", formula("SUM(B2:B3)", 1000)]],
      },
      found: ["total-incomplete Ice!B6"],
    },
    {
      what: "a sum along a row, which makes its ingredient no total",
      sheets: {
        Week: [
          ["Ingredient", "Monday (kg)", "Tuesday (kg)", "All week"],
          ["Water", 5, 4, formula("SUM(B2:C2)", 9)],
          ["Sucrose", 1.2, 1, formula("SUM(B3:C3)", 2.2)],
          ["Grunberry", null, 0.5, formula("SUM(B4:C4)", 0.5)],
        ],
      },
      found: ["unknown-ingredient Week!A4"],
    },
  ])("$what", expectFound);
});
