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
