import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

/** Sorts one to a row in kilograms, with scoops worked out from what each weighs. */
const sorts = (heading: string, notice: string): Rows => [
  ["Our sorts, ingredients in kg"],
  [],
  [null, "One scoop weighs (g)", 60],
  [],
  [],
  ["No.", "Sort", "Sold as", "Water", "Sugar", "Whole milk", "Batch", "Scoops", heading],
  [
    1,
    "Sugar ice",
    "Kugeln",
    0.7,
    0.3,
    null,
    formula("SUM(D7:F7)", 1),
    formula("G7*1000/$C$3", 16.7),
    null,
  ],
  [
    2,
    "Milk ice",
    "Kugeln",
    0,
    0.2,
    0.8,
    formula("SUM(D8:F8)", 1),
    formula("G8*1000/$C$3", 16.7),
    notice,
  ],
  [
    3,
    "Thin ice",
    "Kugeln",
    0.8,
    0.2,
    null,
    formula("SUM(D9:F9)", 1),
    formula("G9*1000/$C$3", 16.7),
    null,
  ],
];

/** What houses get by how many eat there, one of them unreadable, above answers under the number of heads. */
const houses = (unreadable: boolean): Rows => [
  ["g", "Personen", "Wasser", "Zucker", "Masse"],
  ["Grundrezept", 20, 1500, 500, formula("SUM(C2:D2)", 2000)],
  ["Haus 1", 10, 750, 250, formula("SUM(C3:D3)", 1000)],
  ["Haus 2", 40, 3000, 1000, formula("SUM(C4:D4)", 4000)],
  ["Haus 3", 30, 2250, unreadable ? "?" : 750, unreadable ? "?" : formula("SUM(C5:D5)", 3000)],
  [],
  ["Wasser im Grundrezept (g)", 1500],
  ["Gelöste Stoffe im Grundrezept (g)", 500],
  ["Zuckeranteil (%)", 25],
  ["Kosten (€)", 3],
];

test.each([true, false])("how many eat is no ingredient, one row unreadable: %s", (unreadable) => {
  const [block] = auditContext(bookOf({ Sheet1: houses(unreadable) }), []).blocks;
  expect(block?.names.map(({ item }) => item)).toEqual(["Wasser", "Zucker"]);
});

test("what a total counts is an ingredient, however unknown, before the others", () => {
  const rows: Rows = [
    ["g", "Mondsirup", "Wasser", "Zucker", "Masse"],
    ["Haus 1", 50, 750, 250, formula("SUM(B2:D2)", 1050)],
    ["Haus 2", 200, 3000, 1000, formula("SUM(B3:D3)", 4200)],
    [],
    ["Wasser (g)", 1500],
  ];
  const [block] = auditContext(bookOf({ Sheet1: rows }), []).blocks;
  expect(block?.names.map(({ item }) => item)).toEqual(["Mondsirup", "Wasser", "Zucker"]);
});

test("what is said of the mix behind the total of recipes in rows is no ingredient of theirs", () => {
  const rows: Rows = [
    ["Trials, % m/m"],
    ["Trial", "water", "sugar", "lemon juice", "Sum", "Sugars (% m/m)"],
    ["T1", 70, 20, 10, formula("SUM(B3:D3)", 100), 20.2],
    ["T2", 65, 25, 10, formula("SUM(B4:D4)", 100), 25.2],
  ];
  const [block] = auditContext(bookOf({ Sheet1: rows }), []).blocks;
  expect(block?.names.map(({ item }) => item)).toEqual(["water", "sugar", "lemon juice"]);
  expect(findingsOf(rows).map(({ rule }) => rule)).not.toContain("total-incomplete");
});

test("what is worked out from the sums of recipes in rows is no ingredient of theirs", () => {
  const [block] = auditContext(bookOf({ Sheet1: sorts("Notice", "milk") }), []).blocks;
  expect(block?.names.map(({ item }) => item)).toEqual(["Water", "Sugar", "Whole milk"]);
  expect(block?.recipes.map(({ title, unit }) => [title, unit])).toEqual([
    ["Sugar ice", "kg"],
    ["Milk ice", "kg"],
    ["Thin ice", "kg"],
  ]);
});

test.each([
  ["Notice", "milk"],
  ["Aushang", "milk"],
  ["Card", "milk"],
  ["Auf die Tafel", "mit Milch."],
  ["On the board", "with milk"],
])("allergens below %p are told: %s", (heading, said) => {
  expect(placesOf(findingsOf(sorts(heading, said)))).toEqual([]);
});

test.each(["Base", "Shelf"])("allergens below %p are not told", (heading) => {
  expect(placesOf(findingsOf(sorts(heading, "milk")))).toEqual(["A6:I9 caution-not-named"]);
});

test.each([
  ["Aushang", []],
  ["Shelf", ["A1:B3 caution-not-named"]],
])("an allergen right of %p below a list", (label, found) => {
  const rows: Rows = [
    ["Ingredient", "g"],
    ["whole milk", 800],
    ["sucrose", 200],
    [],
    ["Texture", "Kugeln"],
    [label, "milk"],
  ];
  const places = placesOf(findingsOf(rows)).filter((place) => place.includes("caution"));
  expect(places).toEqual(found);
});

test("what is bought for a price is not the amount that is used of it", () => {
  const rows = (cost: (row: number) => string): Rows => [
    ["Item", "Paid ($)", "For (kg)", "Used (g)", "Cost ($)"],
    ["water", 0.1, 1, 700, formula(cost(2), 0.07)],
    ["sugar", 2, 1, 300, formula(cost(3), 0.6)],
    ["All", null, null, formula("SUM(D2:D3)", 1000), formula("SUM(E2:E3)", 0.67)],
  ];
  const lines = (cost: (row: number) => string) =>
    auditContext(bookOf({ Sheet1: rows(cost) }), []).blocks.map(({ recipes }) =>
      recipes.map(({ line }) => line),
    );
  expect(lines((row) => `B${row}/C${row}*D${row}/1000`)).toEqual([[3]]);
  // Where nothing is divided by it, it is another amount.
  expect(lines((row) => `B${row}*D${row}/1000`)).toEqual([[2, 3]]);
});

/** Sorts one to a row, with what is said of them left of their amounts. */
const saidFirst: Rows = [
  ["Zutaten in kg je Ansatz"],
  [],
  ["Sorte", "Eis bei −14 °C (%)", "Zucker (% der Masse)", "Wasser", "Zucker", "Zitronensaft", "kg"],
  ["Zitrone", 74, 25, 0.7, 0.25, 0.05, formula("SUM(D4:F4)", 1)],
  ["Süß", 66, 30, 1.3, 0.6, 0.1, formula("SUM(D5:F5)", 2)],
];

test("a share of the mass left of amounts in kg is an answer, and its unit is its own", () => {
  const [block] = auditContext(bookOf({ Sheet1: saidFirst }), []).blocks;
  expect(block?.names.map(({ column }) => column)).toEqual([3, 4, 5]);
  expect(block?.recipes.map(({ unit }) => unit)).toEqual(["kg", "kg"]);
});

test.each([
  ["Batch (kg)", 1, "kg"],
  ["alles zusammen, kg", 1, "kg"],
  ["Batch (kg)", 0.001, "g"],
  ["Batch", 1, "g"],
])("below %p with %p of their sum recipes in rows are in %p", (heading, factor, unit) => {
  const rows: Rows = [
    ["Sort", "Water", "Sugar", heading],
    ["Lemon", 0.7, 0.3, factor],
    ["Sweet", 1.3, 0.7, 2 * factor],
  ];
  const [block] = auditContext(bookOf({ Sheet1: rows }), []).blocks;
  expect(block?.recipes.map((recipe) => recipe.unit)).toEqual([unit, unit]);
});

/** Sorts in rows, with what is said of the mix behind their sum; there is water among the ingredients or not. */
const withWaterBehind = (liquid: string, behind: string): Rows => [
  ["Rezepte in kg je Ansatz"],
  [],
  ["Sorte", liquid, "Zucker", "Zitronensaft", "Ansatz (kg)", "Ware (€)", behind, "Fett (g)"],
  ["Preis (€/kg)", 0.5, 2, 4],
  ["Zitrone", 0.7, 0.25, 0.05, formula("SUM(B5:D5)", 1), 0.7, 746, 0],
  ["Süß", 1.3, 0.6, 0.1, formula("SUM(B6:D6)", 2), 1.4, 1391, 0],
];

test.each([
  ["Wasser", "Wasser (g)"],
  ["Wasser", "Zucker (g)"],
  ["Orangensaft", "Wasser (g)"],
])("behind the sum of %p and others %p is said of the mix", (liquid, behind) => {
  const [block] = auditContext(bookOf({ Sheet1: withWaterBehind(liquid, behind) }), []).blocks;
  expect(block?.names.map(({ item }) => item)).toEqual([liquid, "Zucker", "Zitronensaft"]);
  expect(block?.recipes.map(({ unit }) => unit)).toEqual(["kg", "kg"]);
});

test("another ingredient behind a sum may be one of the recipe", () => {
  const rows = withWaterBehind("Wasser", "Schokolade");
  const [block] = auditContext(bookOf({ Sheet1: rows }), []).blocks;
  expect(block?.names.map(({ item }) => item)).toContain("Schokolade");
});

test("shares of a table in per cent are its lines", () => {
  const rows: Rows = [
    ["Sort", "Water (%)", "Sugar (% of mix)", "Lemon juice (%)"],
    ["Lemon", 70, 25, 5],
    ["Sweet", 65, 30, 5],
  ];
  const [block] = auditContext(bookOf({ Sheet1: rows }), []).blocks;
  expect(block?.names.map(({ column }) => column)).toEqual([1, 2, 3]);
  expect(block?.recipes.map(({ unit }) => unit)).toEqual(["%", "%"]);
});

/** Mixes in rows above the sum of them all, whose label stands in the last ingredient's column. */
const loaded = (last: number | null, label: string): Rows => [
  ["Mix (kg)", "Water", "Sugar", "Honey", "Whole mix"],
  ["Plain", 0.7, 0.3, null, formula("SUM(B2:D2)", 1)],
  ["Sweet", 0.6, 0.2, last, formula("SUM(B3:D3)", 0.8 + (last ?? 0))],
  [null, null, null, label, formula("SUM(E2:E3)", 1.8 + (last ?? 0))],
];

test("the label of a sum below the last ingredient says nothing of that", () => {
  const namesOf = (rows: Rows) =>
    auditContext(bookOf({ Sheet1: rows }), []).blocks.flatMap(({ names }) =>
      names.map(({ item }) => item),
    );
  expect(namesOf(loaded(0.2, "loaded"))).toEqual(["Water", "Sugar", "Honey"]);
  const [head = [], ...rows] = loaded(0.2, "loaded");
  const words = rows.slice(0, 2).map((row, at) => row.with(3, at === 0 ? "none" : "a spoon"));
  expect(namesOf([head, ...words])).not.toContain("Honey");
});
