import { expect, test } from "@jest/globals";
import { cleanText } from "../../src/audit/recipes/headings/cleanText";
import { formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

test.each([
  ["Amount (g)", "Amount (g)"],
  ["Amount\n(g)", "Amount (g)"],
  [" Amount\u00a0 (g)\r\n", "Amount (g)"],
  ["Freezing point :", "Freezing point"],
  ["Freezing point: (°C)", "Freezing point (°C)"],
  ["Salt*", "Salt"],
  ["Salt †", "Salt"],
  ["Amount (g) **", "Amount (g)"],
  ["Allergens: milk", "Allergens: milk"],
  ["*", "*"],
  ["2 * 3", "2 * 3"],
])("%j is read as %j", (typed, read) => {
  expect(cleanText(typed)).toBe(read);
});

/** A list that misses nothing but the allergen of its milk, and an answer that is wrong. */
const list = (spell: (text: string) => string): Rows => [
  [spell("Ingredient"), spell("Amount (g)"), spell("Unit price (€ per kg)")],
  ["whole milk", 500, 1.2],
  ["sucrose", 120, 1.5],
  ["water", 380, 0.01],
  [spell("Total (g)"), formula("SUM(B2:B4)", 1000)],
  [],
  [spell("Freezing point (°C)"), -3.9],
  [spell("Sugars (g)"), 143],
  [spell("Serving temperature (°C)"), -12],
];

test.each([
  ["in two lines", (text: string) => text.replaceAll(" (", "\n(")],
  ["with blanks that do not break", (text: string) => text.replaceAll(" ", "\u00a0")],
  ["with a blank behind", (text: string) => `${text} `],
  ["with a colon", (text: string) => text.replace(/( \(|$)/, ":$1")],
  ["with a mark of a note", (text: string) => `${text}*`],
  ["in capitals", (text: string) => text.replaceAll(/\p{L}{4,}/gu, (word) => word.toUpperCase())],
])("labels %s are read as they are", (_, spell) => {
  const plain = placesOf(findingsOf(list((text) => text)));
  expect(plain).toContain("B7 result-differs");
  expect(placesOf(findingsOf(list(spell)))).toEqual(plain);
});

const oddNames = (rows: Rows): readonly string[] =>
  placesOf(findingsOf(rows)).filter((place) => place.includes("odd-letters"));

test("a blank behind a name is told, behind a label that has more in it than the name it is not", () => {
  const named = (name: string): Rows => [
    ["Ingredient", "Amount"],
    [name, 800],
    ["Water (g)", 500],
  ];
  expect(oddNames(named("Sucrose "))).toEqual(["A2 name-with-odd-letters"]);
  expect(oddNames(named("Sucrose (g) "))).toEqual([]);
  expect(oddNames(named("Lemon\njuice"))).toEqual([]);
});

test("in capitals ß is SS, in the names and headings of own ingredients, too", () => {
  const own: Rows = [
    ["Zutat", "Menge (g)"],
    ["HAUSSOSSE", 100],
    ["WEISSER ZUCKER", 120],
    ["WASSER", 400],
    [],
    ["NAME", "WASSER", "ZUCKER", "EIWEISS", "FETT"],
    ["Haussoße", 60, 38, 1, 1],
  ];
  const wanted = /unknown-ingredient|own-ingredients-refused/;
  expect(placesOf(findingsOf(own)).filter((place) => wanted.test(place))).toEqual([]);
});

test("headings of own ingredients may end in a colon", () => {
  const own: Rows = [
    ["Ingredient", "Amount (g)"],
    ["house sauce", 100],
    ["water", 400],
    [],
    ["Name:", "Water:", "Sugars: (g)", "Protein:", "Fat:"],
    ["house sauce", 60, 38, 1, 1],
  ];
  const wanted = /unknown-ingredient|own-ingredients-refused/;
  expect(placesOf(findingsOf(own)).filter((place) => wanted.test(place))).toEqual([]);
});
