import { findRecipes } from "../../src/audit/recipes/findRecipes";
import { callFunction } from "../../src/worksheet/callFunction";
import { bookOf, formula, type Rows } from "./bookOf";
import { expectFound, rulesOn, type Tried } from "./tried";

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

const titlesOf = (rows: Rows): string[] =>
  findRecipes(bookOf({ Sheet1: rows })).blocks.flatMap(({ recipes }) =>
    recipes.map(({ title }) => title),
  );

describe("No recipe", () => {
  test.each([
    ["Counted (kg)", "On hand (kg)", "Lasts for"],
    ["Gezählt (kg)", "Im Haus (kg)", "Reicht für Ansätze"],
  ])("is what was %s, and of a recipe what is %s", (counted, hand, lasts) => {
    const stock: Rows = [
      ["Item", counted],
      ["Water", 9],
      ["Sucrose", 21],
    ];
    const recipe: Rows = [
      ["Ingredient", "Amount (g)", hand, lasts],
      ["Water", 850, 9, 10.6],
      ["Sucrose", 150, 21, 140],
    ];
    expect([titlesOf(stock), titlesOf(recipe)]).toEqual([[], ["Amount (g)"]]);
  });
  test("is a column in which only the sums of groups stand", () => {
    const rows: Rows = [
      ["What goes in", "Weight (kg)", "Group (kg)"],
      ["The day before", null, formula("SUM(B3:B4)", 1)],
      ["Water", 0.85, null],
      ["Sucrose", 0.15, null],
    ];
    expect(titlesOf(rows)).toEqual(["Weight (kg)"]);
  });
  test("is a column of allergens beside amounts that run across", () => {
    const rows: Rows = [
      ["Trial (g)", "Whole milk", "Sucrose", "Allergens"],
      ["A1", 850, 150, "Milk"],
      ["A2", 840, 160, "Milk"],
    ];
    expect(titlesOf(rows)).toEqual(["A1", "A2"]);
  });
});

describe("Allergens are told", () => {
  const milk = (said: string): Rows => [
    ["Ingredient", "Amount (g)"],
    ["Whole milk", 850],
    ["Sucrose", 150],
    [],
    [said],
  ];
  test.each([
    ["milk, tree nuts (hazelnuts); whole nuts: not for small children", true],
    ["Milch", true],
    ["milkman comes at six", false],
  ])("by %s: %s", (said, isTold) => {
    expect(rulesOn({ Ice: milk(said) }).includes("caution-not-named")).toBe(!isTold);
  });
});

const answersOf = (stated: number): Tried["sheets"] => ({
  Plan: SYRUP,
  Answers: [
    ["Freezing point (°C)", stated],
    ["Sugars (% of the mix)", formula("100*Plan!B3/SUM(Plan!B2:B3)", 15)],
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
