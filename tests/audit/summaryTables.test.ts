import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

const point = (top: number, bottom: number, value: number) =>
  formula(`RIME.FREEZINGPOINT(A${top}:A${bottom},B${top}:B${bottom})`, value);

/** Water 700 g and sugar 300 g freeze at −2.71 °C, milk and honey at −1.9 °C. */
const twoRecipes = (waterOfSecond: number): Rows => [
  ["Ingredient", "%", null, "Kind", "Freezing point (°C)", "Water (% w/w)"],
  ["water", 70, null, "Ice", point(2, 3, -2.7), 70],
  ["sugar", 30, null, "Milk", point(5, 6, -1.9), waterOfSecond],
  [],
  ["milk 2 % fat", 85],
  ["honey", 15],
];

test("a table of answers is about the recipes that the formulas in its rows read", () => {
  const { results } = auditContext(bookOf({ Sheet1: twoRecipes(78.5) }), []);
  expect(results.map(({ row, block }) => [row, block.names[0]?.item])).toEqual([
    [1, "water"],
    [2, "milk 2 % fat"],
  ]);
});

test("a typed answer in such a row is compared with its own recipe", () => {
  const wrong = findingsOf(twoRecipes(60)).filter(({ cell }) => cell === "F3");
  expect(placesOf(wrong)).toEqual(["F3 result-differs"]);
  expect(findingsOf(twoRecipes(78.5)).filter(({ cell }) => cell === "F3")).toEqual([]);
});

test("a cell that only shows a wrong answer elsewhere is not told again", () => {
  const recipe: Rows = [
    ["Ingredient", "Amount (g)"],
    ["Water", 600],
    ["Sucrose", 150],
    ["Freezing point (°C)", -5],
  ];
  const overview: Rows = [["Freezing point (°C)", formula("Recipe!B4", -5)]];
  expect(placesOf(findingsOf({ Recipe: recipe, Overview: overview }))).toEqual([
    "B4 result-differs",
  ]);
});

test("a heading with an answer of its own behind it still heads its list", () => {
  const rows: Rows = [
    ["Spoons", "What went in", "Grams", "Came out (g)", 780],
    ["2", "whole milk", 600, "Scoops", 8],
    ["3", "sugar", 150, "Freezing point (°C)", -2],
    ["1", "honey", 50, "Hours", 5],
  ];
  const { blocks } = auditContext(bookOf({ Sheet1: rows }), []);
  expect(blocks.map(({ names }) => names.map(({ item }) => item))).toEqual([
    ["whole milk", "sugar", "honey"],
  ]);
});

/** Water 700 g and sugar 300 g freeze at −2.71 °C, milk 850 g and honey 150 g at −2.08 °C. */
const ofTheirOwn = {
  Lemon: [
    ["Recipe", "Lemon ice"],
    ["Ingredient", "kg"],
    ["water", 0.7],
    ["sugar", 0.3],
    ["Total", formula("SUM(B3:B4)", 1)],
  ],
  Milk: [
    ["Recipe", "Honey milk"],
    ["Ingredient", "kg"],
    ["milk 2 % fat", 0.85],
    ["honey", 0.15],
    ["Total", formula("SUM(B3:B4)", 1)],
  ],
} satisfies Record<string, Rows>;

const summed = (lemonC: number, milkC: number): Rows => [
  ["Sheet", "Mass (kg)", "Freezing point (°C)", "Should be"],
  ["first", formula("Lemon!B5", 1), lemonC, "scraped granita"],
  ["second", formula("Milk!B5", 1), milkC, "firm bar at −18"],
];
const named = (lemonC: number, milkC: number): Rows => [
  ["Flavour", "Freezing point (°C)"],
  ["Lemon ice", lemonC],
  ["Honey milk", milkC],
];
const across = (lemonC: number, milkC: number): Rows => [
  ["Sample", "Lemon", "Milk"],
  ["Freezing point (°C)", lemonC, milkC],
];

test.each([
  ["reads its total", summed, "C3"],
  ["names it", named, "B3"],
  ["is headed by its sheet's name", across, "C2"],
] as const)("a row of a summary is about the recipe that it %s", (_, summary, cell) => {
  const book = (milkC: number) => ({ Board: summary(-2.7, milkC), ...ofTheirOwn });
  const off = (milkC: number) =>
    findingsOf(book(milkC)).filter(({ rule }) => rule === "result-differs");
  expect(placesOf(off(-4))).toEqual([`${cell} result-differs`]);
  expect(off(-2.1)).toEqual([]);
});

test("what a summary says a recipe should be is its target", () => {
  const found = findingsOf({ Board: summed(-2.7, -2.1), ...ofTheirOwn });
  const missed = found.filter(({ rule }) => rule === "misses-its-target");
  expect(missed.map(({ sheet, cell }) => [sheet, cell])).toEqual([["Board", "D2"]]);
});
