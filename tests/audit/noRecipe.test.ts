import { findRecipes } from "../../src/audit/recipes/findRecipes";
import { bookOf, formula, type Rows } from "./bookOf";
import { rulesOn } from "./tried";

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
  test("is where several lines are kept, though a beer has its name", () => {
    const rows = (kept: string): Rows => [
      [null, null, null, "from the farm"],
      ["Anteil (%)", "Rohstoff", "Ansatz (kg)", "Bezug"],
      [70, "Wasser", 3.5, null],
      [25, "Zucker", 1.25, kept],
      [5, "Zitronensaft", 0.25, "Lager"],
    ];
    expect(rulesOn({ Hof: rows("Lager") })).not.toContain("caution-not-named");
    expect(titlesOf(rows("Lager"))).toEqual(titlesOf(rows("Großmarkt")));
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

test("Below a recipe that runs across, a row that begins with its answers is none", () => {
  const rows = (first: string, second: string): Rows => [
    ["Ingredient", "water", "sucrose", "vodka 40 %"],
    ["Grams", 700, 200, 100],
    [],
    ["Checks", first, second, "Water (g)", "In solution (g)", "Alcohol (g)"],
    [null, -3.4, 3.4, 767, 233, 33],
  ];
  const titles = ["Grams"];
  expect(titlesOf(rows("FP (°C)", "FP below water's by (K)"))).toEqual(titles);
  expect(titlesOf(rows("Gefrierpunkt (°C)", "Eis bei −18 °C (%)"))).toEqual(titles);
});

test("Headings of answers head no list: what stands below them is said of the list above", () => {
  const rows = (depression: number): Rows => [
    ["Ingredient", "water", "sucrose"],
    ["Amount (kg)", 1.7, 0.3],
    ["Begins to freeze, °C", "degrees below water's, K", "In solution, g"],
    [-1.17, depression, 300],
    [],
    ["Ingredient", "water", "sucrose"],
    ["Amount (kg)", 1.6, 0.4],
  ];
  expect(rulesOn({ Week: rows(-1.17) })).toContain("freezing-point-sign");
  expect(rulesOn({ Week: rows(1.17) })).not.toContain("freezing-point-sign");
});

test("A line with an error for its amount, and an answer beside it, heads no list of its own", () => {
  const rows: Rows = [
    ["Ingredient", "Amount", "Unit"],
    ["Water", 800, "g"],
    ["Sucrose", { value: { error: "#NAME?" } }, "g", null, "Ice, share of the mix"],
    ["Dextrose", 50, "g"],
    ["Lemon juice", 60, "g"],
  ];
  const { blocks } = findRecipes(bookOf({ Sheet1: rows }));
  expect(blocks.map(({ names }) => names.length)).toEqual([4]);
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
