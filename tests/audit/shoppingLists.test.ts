import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { bookOf, formula, type Rows } from "./bookOf";
import { rulesOn } from "./tried";

const INGREDIENTS = ["whole milk", "cream 35 % fat", "sucrose", "honey, average"];
const GRAMS = [600, 200, 150, 50];

/** Two recipes with their cautions, and what is to be bought for both. */
const shopping = (need: (row: number) => string): Readonly<Record<string, Rows>> => {
  const recipes: Rows = [
    ["Ingredient", "Milk ice (g)", "Honey ice (g)"],
    ...INGREDIENTS.map((item, at) => [item, GRAMS[at]!, 2 * GRAMS[at]!]),
    ["Contains milk. Honey: not for infants under 12 months."],
  ];
  const list: Rows = [
    ["What", "Needed (kg)"],
    ...INGREDIENTS.map((item, at) => {
      const kilograms = (14 * GRAMS[at]!) / 1000;
      const text = need(at + 2);
      return [item, text === "" ? kilograms : formula(text, kilograms)];
    }),
  ];
  return { Recipes: recipes, Shopping: list };
};

describe("What is to be bought for several recipes", () => {
  test.each([
    ["by SUMPRODUCT", (row: number) => `SUMPRODUCT(Recipes!B${row}:C${row},{4,5})/1000`],
    ["added up", (row: number) => `(Recipes!B${row}*4+Recipes!C${row}*5)/1000`],
  ])("is no mix of its own, %s", (_how, need) => {
    expect(rulesOn(shopping(need))).not.toContain("caution-not-named");
  });
  test("is a mix where it was typed", () => {
    expect(rulesOn(shopping(() => ""))).toContain("caution-not-named");
  });
});

/** Two ices, one with spirit, and what is to be bought for both, but for the water. */
const bought = (spirit: string, given: { sum?: number; more?: Rows } = {}) => {
  const ice = (item: string, grams: number): Rows => [
    ["Zutat", "Menge (g)"],
    ["Wasser", 600],
    ["Zucker", 150],
    [item, grams],
  ];
  const list: Rows = [
    ["Was", "Gramm zusammen"],
    ["Zucker", formula("Apfel!B3+Schnaps!B3", 300)],
    ["Apfelmus", formula("Apfel!B4", 300)],
    ["Spirituose 40 % vol", formula(spirit, 60)],
    ["alles ohne Wasser", given.sum ?? formula("SUM(B2:B4)", 660)],
    ...(given.more ?? []),
  ];
  return { Apfel: ice("Apfelmus", 300), Schnaps: ice("Spirituose 40 % vol", 60), Einkauf: list };
};

/** What is found on the list of what is to be bought. */
const onList = (sheets: Readonly<Record<string, Rows>>): string[] =>
  auditWorkbook(bookOf(sheets))
    .findings.filter(({ sheet, severity }) => sheet === "Einkauf" && severity !== "note")
    .map(({ rule }) => rule);

describe("What is to be bought for several recipes but for the water", () => {
  test("is not eaten, and its sum is that of its lines", () => {
    expect(onList(bought("Schnaps!B4"))).toEqual([]);
    expect(onList(bought("Schnaps!B4", { sum: 660 }))).toEqual([]);
  });
  test("has another sum where one was typed", () => {
    expect(onList(bought("Schnaps!B4", { sum: 800 }))).not.toEqual([]);
  });
  test("is a mix where one says what it is to be like", () => {
    const more = [["Ziel", "Kugeln bei −13"]];
    expect(onList(bought("Schnaps!B4", { more }))).not.toEqual([]);
  });
});

/** A recipe, and so many of its lines for four batches. */
const forFour = (lines: readonly string[]): Readonly<Record<string, Rows>> => ({
  Recipe: [
    ["Ingredient", "g"],
    ["water", 520],
    ["sucrose", 140],
    ["glucose syrup DE 42", 60],
  ],
  Shop: [
    ["For 4 batches", "g"],
    ...lines.map((name, at) => [name, formula(`4*Recipe!B${at + 2}`, 4 * [520, 140, 60][at]!)]),
  ],
});

describe("What is bought of a recipe", () => {
  test("may be called by a short name: which one it is stands there", () => {
    const book = forFour(["water", "glucose syrup"]);
    expect(rulesOn(book)).not.toContain("ambiguous-ingredient");
  });
  test("is the recipe in another size where all of it is", () => {
    const book = forFour(["water", "sucrose", "glucose syrup"]);
    expect(rulesOn(book)).toContain("ambiguous-ingredient");
  });
});

describe("What is bought in the order of the recipe, but for what is at hand", () => {
  const bought = (last: number): Readonly<Record<string, Rows>> => ({
    Recipe: [
      ["Ingredient", "g"],
      ["whole milk", 520],
      ["cream 35 % fat", 200],
      ["egg yolk, pasteurised", 90],
      ["caster sugar", 140],
    ],
    Shop: [
      ["For 4 batches", "g"],
      ["milk", formula("4*Recipe!B2", 2080)],
      ["cream", formula("4*Recipe!B3", 800)],
      ["sugar", formula(`4*Recipe!B${last}`, 4 * (last === 5 ? 140 : 90))],
    ],
  });
  test("reads the line that its short name means", () => {
    expect(rulesOn(bought(5)).join()).not.toMatch(/inconsistent|slips/);
  });
});
