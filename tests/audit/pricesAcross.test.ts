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
