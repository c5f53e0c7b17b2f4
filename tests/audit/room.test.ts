import { amountOf } from "../../src/audit/recipes/amounts/amountOf";
import { findRecipes } from "../../src/audit/recipes/findRecipes";
import { bookOf, formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

const listsOf = (rows: Rows) =>
  findRecipes(bookOf({ Sheet1: rows })).blocks.map((block) => ({
    headerRow: block.headerRow,
    totals: block.totals,
    grams: block.recipes.map((recipe) =>
      block.names.map((name) => amountOf(block, recipe, name).grams),
    ),
  }));

const LINES: Rows = [
  ["water", 6],
  ["sucrose", 1.8],
  ["lemon juice", 1.2],
];

/** Rows with the first column, and a free one behind it. */
const spaced = (rows: Rows): Rows => rows.map(([name = null, ...rest]) => [name, null, ...rest]);

describe("A list is found whatever room is left in it", () => {
  test.each([0, 1, 2])("with %i free rows under its headings", (free) => {
    const room: Rows = Array.from({ length: free }, () => []);
    const [list, ...more] = listsOf([["For the tank", "Weight (kg)"], ...room, ...LINES]);
    expect(more).toEqual([]);
    expect(list).toMatchObject({ headerRow: 0, grams: [[6000, 1800, 1200]] });
  });
  test("but a word with its value above a free row is no heading", () => {
    const [list] = listsOf([["Wanted", "scooped"], [], ...LINES]);
    expect(list).toMatchObject({ headerRow: null, grams: [[6, 1.8, 1.2]] });
  });
  test("with a free column behind the names, below headings of which none says ingredient", () => {
    const rows: Rows = [["For the tank", "Weight (kg)"], ...LINES];
    expect(listsOf(spaced(rows))).toMatchObject([{ headerRow: 0, grams: [[6000, 1800, 1200]] }]);
  });
  test("with a free column behind the names and titles of recipes over the amounts", () => {
    const rows: Rows = [
      [null, null, "Mango ice", "Lemon ice"],
      ["water", null, 500, 600],
      ["sucrose", null, 150, 180],
      ["mango", null, 350, null],
      ["lemon juice", null, null, 120],
    ];
    expect(listsOf(rows)).toMatchObject([
      {
        headerRow: 0,
        grams: [
          [500, 150, 350, null],
          [600, 180, null, 120],
        ],
      },
    ]);
  });
  test("and amounts behind a free column that are worked out from shares left of the names", () => {
    const rows: Rows = [
      ["Batch (g)", 2000],
      ["Per cent", "Ingredient", null, "Grams"],
      [70, "water", null, formula("$B$1*A3/100", 1400)],
      [20, "sucrose", null, formula("$B$1*A4/100", 400)],
      [10, "lemon juice", null, formula("$B$1*A5/100", 200)],
    ];
    expect(listsOf(rows)).toMatchObject([{ grams: [[1400, 400, 200]] }]);
  });
  test("while numbers of something else behind a free column are those of another table", () => {
    const rows: Rows = [
      ["Per cent", "Ingredient", null, "Tray"],
      [70, "water", null, 12],
      [20, "sucrose", null, 9],
      [10, "lemon juice", null, 17],
    ];
    expect(listsOf(rows)).toMatchObject([{ grams: [[70, 20, 10]] }]);
  });
  test("and a total with a free column behind its word", () => {
    const summed: Rows = [["Ingredient", "g"], ...LINES, ["Brine", formula("SUM(C2:C4)", 9)]];
    expect(listsOf(spaced(summed))).toMatchObject([{ totals: [4] }]);
  });
});

/** A list with what is said of it beyond a free column, in which something may stand beside its last line. */
const withAnswers = (waterGrams: number, waterSaid: number, beside: string | number): Rows => [
  ["Amount", "Unit", "Ingredient", null, "Water in it", waterSaid, "g"],
  [waterGrams, "g", "water"],
  [100, "g", "sucrose"],
  [25, "g", "glucose", beside],
  [],
];

describe("What lies beyond a free column is about the list in its rows", () => {
  test.each([["chilled"], ["12.40"]])("even where %s stands in that column once", (beside) => {
    const rows = [...withAnswers(400, 400, beside), ...withAnswers(900, 900, "")];
    expect(placesOf(findingsOf(rows))).toEqual([]);
  });
  test("so a wrong number there is told of that list", () => {
    const rows = [...withAnswers(400, 400, "chilled"), ...withAnswers(900, 400, "")];
    const [finding, ...more] = findingsOf(rows);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ rule: "result-differs", cell: "F6" });
  });
});
