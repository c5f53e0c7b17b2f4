import { describeBlock } from "../../src/audit/recipes/describeBlock";
import { findRecipes } from "../../src/audit/recipes/findRecipes";
import { amountOf } from "../../src/audit/recipes/amounts/amountOf";
import { bookOf, type Rows } from "./bookOf";

const blocksOf = (rows: Rows) => findRecipes(bookOf({ Sheet1: rows })).blocks;
const grams = (rows: Rows) =>
  blocksOf(rows).map((block) =>
    block.recipes.map((recipe) => block.names.map((name) => amountOf(block, recipe, name).grams)),
  );

describe("A recipe is found", () => {
  test("below the headers Ingredient and Amount (g), down to its total", () => {
    const rows: Rows = [
      ["Saturday's lemon ice", null],
      ["Ingredient", "Amount (g)", "Price per kg"],
      ["Water", 600, 0],
      ["Sucrose", 180, 1.2],
      ["Lemon juice", 120, 3],
      ["Total", 900, null],
    ];
    const [block] = blocksOf(rows);
    expect(block).toMatchObject({ layout: "down", headerRow: 1, totals: [5], unitColumn: null });
    expect(block?.names.map(({ item }) => item)).toEqual(["Water", "Sucrose", "Lemon juice"]);
    expect(grams(rows)).toEqual([[[600, 180, 120]]]);
    expect(describeBlock(block!)).toBe(
      "Took A3:A5 for the ingredients and column B for the amounts (g).",
    );
  });
  test("below German headers, in kilograms", () => {
    expect(
      grams([
        ["Zutat", "Menge [kg]"],
        ["Wasser", 0.6],
        ["Saccharose", 0.18],
      ]),
    ).toEqual([[[600, 180]]]);
  });
  test("with two versions side by side", () => {
    const rows: Rows = [
      ["Ingredient", "Mass g, plan", "Mass g, used"],
      ["Water", 600, 610],
      ["Sucrose", 180, 175],
    ];
    expect(grams(rows)).toEqual([
      [
        [600, 180],
        [610, 175],
      ],
    ]);
  });
  test("with a unit beside each amount", () => {
    const rows: Rows = [
      ["Ingredient", "Amount", "Unit"],
      ["Water", 0.6, "kg"],
      ["Sucrose", 180, "g"],
      ["Sodium chloride", 0.1, "oz"],
    ];
    // 1 oz = 28.349523125 g by definition (NIST Handbook 44, appendix C)
    expect(grams(rows)[0]![0]![2]).toBeCloseTo(2.8349523125, 10);
    expect(grams(rows)[0]![0]!.slice(0, 2)).toEqual([600, 180]);
  });
  test("below a title without the word ingredient, when the numbers' header says grams", () => {
    const rows: Rows = [
      ["Granita for Friday", "grams"],
      ["water", 700],
      ["sucrose", 140],
      ["lemon juice", 90],
    ];
    expect(grams(rows)).toEqual([[[700, 140, 90]]]);
  });
  test("in rows below a row of names", () => {
    const rows: Rows = [
      ["Recipe", "Water", "Sucrose", "Lemon juice (g)", "Freezing point"],
      ["mild", 700, 140, 90, -1.5],
      ["sharp", 700, 140, 150, -1.7],
    ];
    const [block] = blocksOf(rows);
    expect(block?.layout).toBe("across");
    expect(block?.recipes.map(({ title }) => title)).toEqual(["mild", "sharp"]);
    expect(grams(rows)).toEqual([
      [
        [700, 140, 90],
        [700, 140, 150],
      ],
    ]);
  });
  test("laid on its side: of the rows below the names only those of amounts count", () => {
    const rows: Rows = [
      ["Ingredient", "Water", "Sucrose", "Salt", "All"],
      ["Share (%)", 80, 19, 1, 100],
      ["Mass (kg)", 4, 0.95, 0.05, 5],
      ["Price (EUR/kg)", 0.01, 1.2, 0.5, null],
      ["Cost (EUR)", 0.04, 1.14, 0.03, 1.21],
    ];
    const [block] = blocksOf(rows);
    expect(block?.recipes).toMatchObject([
      { line: 1, unit: "%" },
      { line: 2, unit: "kg" },
    ]);
    expect(block?.range).toMatchObject({ top: 0, bottom: 4 });
  });
  test("with units beside the amounts whatever heads them, and in brackets below the headings", () => {
    expect(
      grams([
        ["Artikel", "Menge", "ME"],
        ["Wasser", 0.6, "kg"],
        ["Saccharose", 0.18, "kg"],
      ]),
    ).toEqual([[[600, 180]]]);
    expect(
      grams([
        ["Ingredient", "Amount"],
        [null, "[kg]"],
        ["Water", 0.6],
        ["Sucrose", 0.18],
      ]),
    ).toEqual([[[600, 180]]]);
  });
  test("below a heading of its own words, with an answer beyond an empty column in the heading's row", () => {
    const rows: Rows = [
      ["On the bench", "Weight (g)", "Step", null, "Starts to freeze", -2],
      ["water", 800, "boil"],
      ["sucrose", 200, "stir in"],
    ];
    expect(grams(rows)).toEqual([[[800, 200]]]);
    expect(blocksOf(rows)[0]).toMatchObject({ headerRow: 0 });
  });
  test("on cards side by side, whose amounts stand left of their names", () => {
    const rows: Rows = [
      ["grams", "of", null, "grams", "of"],
      [600, "water", null, 500, "water"],
      [180, "sucrose", null, 90, "fructose"],
      [70, "lemon juice", null, 30, "lime juice"],
    ];
    expect(grams(rows)).toEqual([[[600, 180, 70]], [[500, 90, 30]]]);
  });
  test("when an amount is a text with a decimal comma, read as what it shows", () => {
    expect(
      grams([
        ["Ingredient", "g"],
        ["Water", 100],
        ["Sucrose", "12,5"],
        ["Lemon juice", "30 g"],
      ]),
    ).toEqual([[[100, 12.5, 30]]]);
  });
  test("apart from another table beside it", () => {
    const rows: Rows = [
      ["Ingredient", "g", null, "Weekday", "Batch g"],
      ["Water", 600, null, "Monday", 900],
      ["Sucrose", 180, null, "Friday", 800],
    ];
    expect(grams(rows)).toEqual([[[600, 180]]]);
  });
});

describe("No recipe is seen", () => {
  test.each<[string, Rows]>([
    [
      "in a price list",
      [
        ["Item", "Price €/kg"],
        ["Water", 0],
        ["Sucrose", 1.2],
      ],
    ],
    [
      "in a list of people",
      [
        ["Name", "Amount"],
        ["Anna", 3],
        ["Bo", 4],
      ],
    ],
    [
      "where most names are unknown",
      [
        ["Ingredient", "g"],
        ["Water", 1],
        ["Foo", 2],
        ["Bar", 3],
        ["Baz", 4],
      ],
    ],
    [
      "in own ingredients",
      [
        ["name", "water", "sucrose", "fat"],
        ["plum jam", 35, 60, 0],
        ["stock", 95, 0, 1],
      ],
    ],
    ["in an empty sheet", []],
  ])("%s", (_, rows) => expect(blocksOf(rows)).toEqual([]));
});

test("own ingredients with German headers are known names, too, and no recipe themselves", () => {
  const rows: Rows = [
    ["Versuch", "Menge (g)"],
    ["Quittenmus vom Hof", 250],
    ["Wasser", 260],
    [],
    ["Name", "Wasser", "Fett", "Zucker", "Eiweiß"],
    ["Quittenmus vom Hof", 68, 2, 28, 2],
  ];
  const { blocks, ownIngredients } = findRecipes(bookOf({ Sheet1: rows }));
  expect(blocks.map(({ names }) => names.map(({ item }) => item))).toEqual([
    ["Quittenmus vom Hof", "Wasser"],
  ]);
  expect(ownIngredients).toMatchObject([{ problem: null, range: { top: 4, bottom: 5 } }]);
});

test("own ingredients are known names in the recipes of the workbook", () => {
  const book = bookOf({
    Recipe: [
      ["Ingredient", "g"],
      ["Plum jam", 100],
      ["House stock", 30],
    ],
    Own: [
      ["name", "water", "sucrose"],
      ["plum jam", 40, 60],
      ["house stock", 100, 0],
    ],
  });
  const { blocks, ownIngredients } = findRecipes(book);
  expect(ownIngredients).toHaveLength(1);
  expect(blocks[0]?.ownIngredients?.[1]?.[0]).toBe("plum jam");
});
