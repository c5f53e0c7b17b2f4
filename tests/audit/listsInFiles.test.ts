import { callFunction } from "../../src/worksheet/callFunction";
import { type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

type Line = readonly [name: string, grams: number, allergens?: string];

const BANANA: readonly Line[] = [
  ["banana", 446],
  ["whole milk", 312, "milk"],
  ["sugar", 91],
  ["cream 35 % fat", 99, "milk"],
];
const PEACH: readonly Line[] = [
  ["peach", 310],
  ["sugar", 76],
  ["water", 76],
];
const MILK: readonly Line[] = [
  ["whole milk", 305, "milk"],
  ["cream 35 % fat", 73, "milk"],
  ["sugar", 60],
];

/** What the function gives, in two decimals. */
function point(list: readonly Line[]): number {
  const [names, grams] = [list.map(([name]) => [name]), list.map(([, amount]) => [amount])];
  return Math.round(Number(callFunction("FREEZINGPOINT", names, grams)[0]?.[0]) * 100) / 100;
}

const kind = (title: string, list: readonly Line[], total: number, freezes: number): Rows => [
  ...list.map(([name, grams, allergens]): Rows[number] => [title, name, grams, allergens ?? null]),
  [title, "Sum", total],
  [title, "Freezing point (°C)", freezes],
  [title, "Allergens: see the label."],
];
const sumOf = (list: readonly Line[]) => list.reduce((sum, [, grams]) => sum + grams, 0);

const file = (header: Rows[number], peach = sumOf(PEACH), milk = point(MILK)): Rows => [
  header,
  ...kind("Banana ice", BANANA, sumOf(BANANA), point(BANANA)),
  [],
  ...kind("Peach ice", PEACH, peach, point(PEACH)),
  [],
  ...kind("Milk ice", MILK, sumOf(MILK), milk),
];
const ENGLISH = ["Kind", "Ingredient", "Amount in g", "Allergens"];

describe("A file with the name of its recipe in each line and answers among the lines", () => {
  test.each<Tried>([
    { what: "all right", sheets: { Labels: file(ENGLISH) }, found: [] },
    {
      what: "headed in German",
      sheets: { Etiketten: file(["Sorte", "Zutat", "Menge in g", "Allergene"]) },
      found: [],
    },
    {
      what: "a total of the second recipe that is not its sum",
      sheets: { Labels: file(ENGLISH, sumOf(PEACH) + 60) },
      found: ["total-incomplete Labels!C13"],
    },
    {
      what: "an answer of the third that is that of the first",
      sheets: { Labels: file(ENGLISH, sumOf(PEACH), point(BANANA) + 1) },
      found: ["result-differs Labels!C21"],
    },
    {
      what: "a name of the third that nobody knows",
      sheets: { Labels: file(ENGLISH).with(16, ["Milk ice", "House blend B", 305, "milk"]) },
      found: ["unknown-ingredient Labels!B17"],
    },
    {
      what: "parts of the whole below the answers are no recipe",
      sheets: {
        Labels: [
          ["Kind", "Ingredient", "Amount in g"],
          ...kind("Milk ice", MILK, sumOf(MILK), point(MILK)).map((row) => row.slice(0, 3)),
          ["of which", "water", 314],
        ],
      },
      found: [],
    },
  ])("$what", expectFound);
});
