import { unitText } from "../../src/audit/recipes/amounts/unit";
import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";
import { placesOf, findingsOf } from "./findingsOf";

const recipesOf = (rows: Rows): string[] =>
  auditContext(bookOf({ Sheet1: rows })).blocks.flatMap(({ names, recipes }) =>
    recipes.map(({ title, unit }) => `${title} (${unitText(unit)}): ${names.length}`),
  );

/** Recipes with one header for all, each with its name on its left, a total and a line below it. */
const card = (heading: string, titles: readonly [string, string], below: Rows): Rows => [
  [heading, "Ingredient", "Amount (g)"],
  [titles[0], "water", 500],
  [null, "sucrose", 120],
  [null, "lemon juice", 80],
  [null, "Total", formula("SUM(C2:C4)", 700)],
  ...below,
  [titles[1], "whole milk", 600],
  [null, "sucrose", 90],
  [null, "cream 35 % fat", 110],
  [null, "Total", 800],
];
const NOTE: Rows = [[null, "Allergens: milk."], []];

test.each([
  ["after a line of words", "What", NOTE, "Lemon ice"],
  ["after two blank rows", "Recipe", [[], []] as Rows, "Amount (g)"],
])("recipes under one header are told apart by their names: %s", (_what, heading, below, first) => {
  expect(recipesOf(card(heading, ["Lemon ice", "Milk ice"], below))).toEqual([
    `${first} (g): 3`,
    "Milk ice (g): 3",
  ]);
});

test("the parts of one recipe stay together", () => {
  expect(recipesOf(card("Phase", ["Phase 1", "Phase 2"], [[]]))).toEqual(["Amount (g) (g): 6"]);
});

/** Recipes in columns, in per cent, and below their answers once more for a batch, by formulas. */
const again = (second: string, batch: number): Rows => [
  ["Per cent by mass"],
  ["Ingredient", "Lemon ice", "Milk ice"],
  ["water", 70, 10],
  ["sugar", 20, 15],
  ["lemon juice", 10, 0],
  ["whole milk", 0, 75],
  ["Total", 100, 100],
  ["Sugars (% of the mix)", 20.2, 18.6],
  [],
  ["To weigh in, all in kg"],
  ["Batch (kg)", 10, batch],
  ...["water", "sugar", "lemon juice", second].map((name, at) => [
    name,
    formula(`B${at + 3}/100*B$11`, [7, 2, 1, 0][at] ?? 0),
    formula(`C${at + 3}/100*C$11`, (([10, 15, 0, 75][at] ?? 0) * batch) / 100),
  ]),
  ["Total", formula("SUM(B12:B15)", 10), formula("SUM(C12:C15)", batch)],
];

test("names that begin again after answers are the same recipes in another amount", () => {
  const rows = again("whole milk", 20);
  expect(recipesOf(rows)).toEqual([
    ...["Lemon ice (%): 4", "Milk ice (%): 4", "Lemon ice (kg): 4", "Milk ice (kg): 4"],
  ]);
  expect(placesOf(findingsOf(rows)).filter((place) => !place.includes("caution"))).toEqual([]);
});

test("what begins again is looked at, too", () => {
  const rows = again("whole milk", 20).with(15, ["Total", formula("SUM(B12:B14)", 10), 20]);
  expect(placesOf(findingsOf(rows))).toContain("B16 total-incomplete");
});

/** A file of lists without formulas, the number of the item in each line. */
const items = (total: number, word = "Ansatzmenge"): Rows => [
  ["Artikel", "Komponente", "Menge", "ME"],
  ["A41", "Wasser", 9.8, "kg"],
  ["A41", "Zucker", 2.4, "kg"],
  ["A41", "Zitronensaft", 1.1, "kg"],
  ["A41", word, 13.3, "kg"],
  [],
  ["A42", "Himbeeren", 11.3, "kg"],
  ["A42", "Wasser", 4.1, "kg"],
  ["A42", "Zucker", 3.9, "kg"],
  ["A42", word, total, "kg"],
];

test("of several lists in a file each has its own total, by its words and by its sum", () => {
  expect(placesOf(findingsOf(items(19.3)))).toEqual([]);
  expect(placesOf(findingsOf(items(20.5)))).toEqual(["C10 total-incomplete"]);
  // What weighs far from the lines above is no total of theirs.
  expect(placesOf(findingsOf(items(2.5, "Grundmasse Z")))).toContain("B10 unknown-ingredient");
});
