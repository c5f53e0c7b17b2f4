import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";
import { findingsOf } from "./findingsOf";

/** Amounts counted in measures of which each weighs so much. */
const spoons = (counts: readonly number[]): Rows => [
  ["Ingredient", "How many", "Measure", "1 of it weighs (g)", "Makes (g)"],
  ["Water", counts[0]!, "cup", 150, formula("B2*D2", counts[0]! * 150)],
  ["Sucrose", counts[1]!, "tbsp", 12.5, formula("B3*D3", counts[1]! * 12.5)],
  ["Salt", counts[2]!, "tsp", 6, formula("B4*D4", counts[2]! * 6)],
  ["In the bowl", null, null, null, formula("SUM(E2:E4)", 468)],
];

test("what one spoon weighs is no recipe", () => {
  const [block] = auditContext(bookOf({ Sheet1: spoons([2, 13, 0.9]) }), []).blocks;
  expect(block?.recipes.map(({ title }) => title)).toEqual(["Makes (g)"]);
});

test("a total of what spoons make that leaves a line out", () => {
  const total = ["In the bowl", null, null, null, formula("SUM(E2:E3)", 462.5)];
  const rows: Rows = [...spoons([2, 13, 0.9]).slice(0, -1), total];
  expect(findingsOf(rows).map(({ rule, cell }) => [rule, cell])).toContainEqual([
    "total-incomplete",
    "E5",
  ]);
});

test("what a portion takes is one where all are taken as often", () => {
  const rows: Rows = [
    ["Ingredient", "A table (g)", "Tables", "All (g)"],
    ["Water", 500, 4, formula("B2*C2", 2000)],
    ["Sucrose", 150, 4, formula("B3*C3", 600)],
    ["Total", null, null, formula("SUM(D2:D3)", 2600)],
  ];
  const [block] = auditContext(bookOf({ Sheet1: rows }), []).blocks;
  expect(block?.recipes.map(({ line }) => line)).toContain(1);
});

/** A list with what is there of each and what has to be bought. */
const shopping = (there: string, bought: string): Rows => [
  ["Ingredient", "Milk ice (g)", there, bought],
  ["Whole milk", 700, 500, formula("MAX(0,B2-C2)", 200)],
  ["Sucrose", 200, 0, formula("MAX(0,B3-C3)", 200)],
  ["Skim milk powder", 60, 425, formula("MAX(0,B4-C4)", 0)],
  ["Water", 40, 0, formula("MAX(0,B5-C5)", 40)],
  [],
  ["Allergens: milk"],
];

test.each([
  ["Have already (g)", "Buy (g)"],
  ["We have (g)", "Still to buy (g)"],
  ["Schon da (g)", "Noch zu kaufen (g)"],
])("%p and %p are no mixes", (there, bought) => {
  const rows = shopping(there, bought);
  const [block] = auditContext(bookOf({ Sheet1: rows }), []).blocks;
  expect(block?.recipes.map(({ line }) => line)).toEqual([1]);
});

/** Two recipes, all that they need, what is there and what is left of it; words tell nothing. */
const cellar = (left: (row: number) => string, there: readonly number[]): Rows => [
  ["Ingredient", "Milk ice (g)", "Nut ice (g)", "Both (g)", "Cellar (g)", "Left (g)"],
  ...(
    [
      ["Whole milk", 700, 600],
      ["Sucrose", 200, 180],
      ["Skim milk powder", 60, 20],
    ] as const
  ).map(([name, milk, nut], at) => {
    const row = at + 2;
    const [all, stock] = [milk + nut, there[at]!];
    const rest = left(row).startsWith("D") ? all - stock : stock - all;
    return [
      ...[name, milk, nut, formula(`SUM(B${row}:C${row})`, all), stock],
      formula(left(row), rest),
    ];
  }),
];

const linesOf = (rows: Rows) =>
  auditContext(bookOf({ Sheet1: rows }), []).blocks[0]?.recipes.map(({ line }) => line);

test.each([
  ["what is left", (row: number) => `E${row}-D${row}`],
  ["what is missing", (row: number) => `D${row}-E${row}`],
  ["what is left, rounded, of the sum", (row: number) => `ROUND(E${row}-SUM(B${row}:C${row}),0)`],
])("a stock is no mix, nor is %s", (_, left) => {
  expect(linesOf(cellar(left, [5000, 100, 2500]))).toEqual([1, 2, 3]);
});

test("what was weighed in is a mix, though it differs a little from what was wanted", () => {
  const rows = cellar((row) => `E${row}-D${row}`, [1310, 377, 81]);
  expect(linesOf(rows)).toContain(4);
});

test("two typed recipes are mixes beside their difference", () => {
  const rows: Rows = [
    ["Ingredient", "Old (g)", "New (g)", "Change (g)"],
    ["Water", 600, 450, formula("C2-B2", -150)],
    ["Sucrose", 200, 120, formula("C3-B3", -80)],
    ["Fructose", 40, 80, formula("C4-B4", 40)],
  ];
  expect(linesOf(rows)).toEqual(expect.arrayContaining([1, 2]));
});

/** The density of a mix, by which litres are turned into grams. */
const litres = (label: string): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 800],
  ["Sucrose", 200],
  [],
  ["Tub holds (l)", 5],
  [label, 1.09],
  ["Mix for the tub (g)", formula("B5*1000*B6", 5450)],
];

test.each([
  ["Density, weighed in the jug", true],
  ["Dichte der Masse", true],
  ["Density (g/ml)", false],
])("%p lacks its unit: %p", (label, isBare) => {
  const found = findingsOf(litres(label)).some(({ rule }) => rule === "input-without-unit");
  expect(found).toBe(isBare);
});

/** A jug in cups, weighed beside the names. 1 US cup is 236.6 mL (NIST Handbook 44, appendix C). */
const jug = (weigh: (row: number) => string): Rows => [
  ["Qty", "Measure", "Ingredient", "Grams", "Grams each"],
  [4, "cup", "water", formula(weigh(2), 946), formula("D2/4", 236.5)],
  [2, "cup", "sucrose", formula(weigh(3), 400), formula("D3/4", 100)],
  [0.5, "cup", "lemon juice", formula(weigh(4), 120), formula("D4/4", 30)],
  ["", "", "The whole jug", formula("SUM(D2:D4)", 1466), formula("SUM(E2:E4)", 366.5)],
];

test.each([
  (row: number) => `RIME.GRAMS(C${row},A${row},B${row})`,
  (row: number) => `IF(B${row}="cup",A${row}*236.6,A${row})`,
])("cups that a column of formulas weighs are no recipe beside it", (weigh) => {
  const [block] = auditContext(bookOf({ Sheet1: jug(weigh) }), []).blocks;
  expect(block?.recipes.map(({ title }) => title)).toEqual(["Grams", "Grams each"]);
  expect(block?.unitColumn).toBeNull();
});

test("grams that another column only scales are a recipe", () => {
  const [block] = auditContext(bookOf({ Sheet1: jug((row) => `A${row}*2`) }), []).blocks;
  expect(block?.recipes.map(({ line }) => line)).toContain(0);
});
