import { findRecipes } from "../../src/audit/recipes/findRecipes";
import { bookOf, formula, type Rows } from "./bookOf";

/** Recipes in rows below a first row by which their rows are multiplied, or not. */
const club = (title: string, cost: (row: number) => string): Rows => [
  ["Rezept", "Zucker", "Vollmilch", "Wasser", "alles (kg)", "zusammen"],
  [title, 0.9, 1.5, 0.1],
  ["Milcheis", 0.2, 1.4, 0.1, formula("SUM(B3:D3)", 1.7), formula(cost(3), 2.29)],
  ["Zuckereis", 0.4, 0, 1.5, formula("SUM(B4:D4)", 1.9), formula(cost(4), 0.51)],
];

const titlesOf = (rows: Rows) =>
  findRecipes(bookOf({ Sheet1: rows })).blocks.flatMap(({ recipes }) =>
    recipes.map(({ title }) => title),
  );

test.each(["€ je kg", "Einkauf", "was es kostet", "kcal"])(
  "a row of numbers by which all recipes are multiplied is no recipe: %s",
  (title) => {
    const rows = club(title, (row) => `SUMPRODUCT($B$2:$D$2,B${row}:D${row})`);
    expect(titlesOf(rows)).toEqual(["Milcheis", "Zuckereis"]);
  },
);

test("a row that nothing is multiplied with is one", () => {
  const rows = club("Süßes Eis", (row) => `SUM(B${row}:D${row})*1.2`);
  expect(titlesOf(rows)).toEqual(["Süßes Eis", "Milcheis", "Zuckereis"]);
});

/** A costing on its side: what each ingredient costs, and what part of something that is, say no recipe. */
const costing = (share: string, part: (column: string) => string, answers: string): Rows => [
  ["Ingredient", "Vodka 40 %", "Sugar", "Water", "All"],
  ["Grams", 50, 200, 750, formula("SUM(B2:D2)", 1000)],
  ["€ per kg", 12, 1.2, 0.01],
  [
    "€ in it",
    ...["B", "C", "D"].map((column, at) =>
      formula(`${column}2*${column}3/1000`, [0.6, 0.24, 0.0075][at] ?? 0),
    ),
    formula("SUM(B4:D4)", 0.8475),
  ],
  [share, ...["B", "C", "D"].map((column, at) => formula(part(column), [71, 28, 1][at] ?? 0))],
  [],
  ["Checks", "Freezing point (°C)", "Water (g)", "Dissolved (g)", "Alcohol (g)"],
  [null, formula(answers, -2.1), 780, 215, 16],
];

test("what is worked out from prices is no recipe, nor is a row of answers about one above", () => {
  const rows = costing(
    "Of the money (%)",
    (column) => `100*${column}4/$E$4`,
    "RIME.FREEZINGPOINT(B1:D1,B2:D2)",
  );
  expect(titlesOf(rows)).toEqual(["Grams"]);
});

test("what is worked out from amounts, and a row with an answer about itself, are recipes", () => {
  const rows = costing(
    "Small batch (g)",
    (column) => `${column}2/2`,
    "RIME.FREEZINGPOINT(B1:D1,B2:D2)",
  );
  const syrup: Rows = [
    ["Syrup", "Sugar (g)", "Water (g)", "Freezing point (°C)"],
    ["Bench", 50, 100, formula('RIME.FREEZINGPOINT({"sucrose","water"},B10:C10)', -3.2)],
  ];
  expect(titlesOf([...rows, [], ...syrup])).toEqual(["Grams", "Small batch (g)", "Bench"]);
});
