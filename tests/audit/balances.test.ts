import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { saysContent } from "../../src/audit/recipes/contents/saysContent";
import { bookOf, formula, type Rows } from "./bookOf";

const INGREDIENTS = ["whole milk", "cream 35 %", "sugar", "skim milk powder"];
const GRAMS = [600, 160, 190, 50];

/** A list with a line worked out of its amounts for each set of shares, headed or not. */
const balance = (headings: readonly string[], shares: readonly (readonly number[])[]): Rows => [
  ["", "weight (g)", ...headings],
  ...INGREDIENTS.map((item, at) => [
    item,
    GRAMS[at]!,
    ...shares.map((each) => formula(`B${at + 2}*${each[at]!}`, GRAMS[at]! * each[at]!)),
  ]),
  ["sum", formula("SUM(B2:B5)", 1000)],
  ["contains milk"],
];

const FAT = [0.033, 0.35, 0, 0.008];
const WATER = [0.881, 0.592, 0, 0.032];

const recipesIn = (rows: Rows): number =>
  auditWorkbook(bookOf({ Balance: rows })).recipes.reduce((sum, { recipes }) => sum + recipes, 0);

describe("What the lines of a list are made of", () => {
  test.each([
    ["by headings", ["fat (g)", "water (g)"]],
    ["by formulas, whatever it is called", ["F (g)", "W (g)"]],
  ])("is no recipe, %s", (_how, headings) => {
    expect(recipesIn(balance(headings, [FAT, WATER]))).toBe(1);
  });
  test("is one where it is the same share of each: a smaller batch", () => {
    expect(recipesIn(balance(["half (g)"], [[0.5, 0.5, 0.5, 0.5]]))).toBe(2);
  });
  test("is one where single amounts were lowered: another version", () => {
    expect(recipesIn(balance(["less sweet (g)"], [[1, 1, 0.4, 1]]))).toBe(2);
  });
  test("what foods are made of is no list of recipes", () => {
    const table: Rows = [
      ["Rohstoff", "Wasser", "Fett", "Zucker", "sonst. TM"],
      ["Vollmilch", 88.1, 3.3, 4.8, 3.8],
      ["Sahne 35 %", 59.2, 35, 3.2, 2.6],
      ["Zucker", 0, 0, 100, 0],
    ];
    expect(recipesIn(table)).toBe(0);
  });
  test("rows of a list across that say fat and water of each are none", () => {
    const across: Rows = [
      ["", ...INGREDIENTS],
      ["Menge (g)", ...GRAMS],
      ["Wasser", ...GRAMS.map((grams, at) => grams * WATER[at]!)],
      ["Fett", ...GRAMS.map((grams, at) => grams * FAT[at]!)],
    ];
    expect(recipesIn(across)).toBe(1);
  });
});

test.each([
  ["fat g", "surely"],
  ["Fettgehalt [%]", "surely"],
  ["MSNF", "surely"],
  ["sonst. TM", "surely"],
  ["total solids", "surely"],
  ["davon Fett", "surely"],
  ["Wasser in g", "perhaps"],
  ["sugar, g/100 g", "perhaps"],
  ["Zuckerarten", "perhaps"],
  ["Water ice", null],
  ["Fettarm", null],
  ["Milk", null],
  ["Zuckerfrei", null],
])("%p says a content of food: %p", (heading, says) => {
  expect(saysContent(heading)).toBe(says);
});

test.each(["-".repeat(500), "=".repeat(500), "g/".repeat(100), " / ".repeat(100)])(
  "a line of marks is read at once, and says nothing",
  (marks) => {
    expect(saysContent(marks)).toBe(null);
    expect(saysContent(`${marks}x`)).toBe(null);
  },
);
