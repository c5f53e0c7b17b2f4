import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";

/** The columns that were taken for the amounts of recipes. */
const amountsOf = (rows: Rows): readonly number[] =>
  auditContext(bookOf({ Sheet1: rows }), []).blocks.flatMap(({ recipes }) =>
    recipes.map(({ line }) => line),
  );

const INGREDIENTS = ["water", "whole milk", "sucrose"];
const GRAMS = [250, 600, 150];

/** A costing whose last column multiplies the amounts with the rates beside them. */
const costing = (rate: string, product: string): Rows => [
  ["Sr.", "Particulars", "Qty (g)", rate, product],
  ...INGREDIENTS.map((item, at) => {
    const grams = GRAMS[at]!;
    const [row, each] = [at + 2, 10 * (at + 1)];
    return [at + 1, item, grams, each, formula(`C${row}*D${row}/1000`, (grams * each) / 1000)];
  }),
  [null, "Total", formula("SUM(C2:C4)", 1000), null, formula("SUM(E2:E4)", 19)],
];

test.each([
  ["Rate (Rs/kg)", "Amount (Rs)"],
  ["Rate", "Amount"],
  ["je kg", "Menge mal Preis"],
])("what a line costs is no amount: %p and %p", (rate, product) => {
  expect(amountsOf(costing(rate, product))).toEqual([2]);
});

test("what so many times a recipe weighs is an amount", () => {
  expect(amountsOf(costing("Batches", "Amount (g)"))).toContain(4);
});

/** A list of prices, with a number before each line. */
const numbered = (first: string, numbers: readonly number[]): Rows => [
  [first, "Item", "per kg, inside the tax"],
  ...INGREDIENTS.map((item, at) => [numbers[at]!, item, 40 + 7 * at]),
];

test.each(["Sr.", "Lfd.", ""])("the numbers of lines are no amounts: %p", (first) => {
  expect(amountsOf(numbered(first, [1, 2, 3]))).toEqual([]);
});

test("other numbers may be amounts, and so may numbers that are said to be", () => {
  expect(amountsOf(numbered("Lemon ice", [3, 2, 1]))).toEqual([0]);
  expect(amountsOf(numbered("Amount (kg)", [1, 2, 3]))).toEqual([0]);
});

/** What is needed, what stands somewhere, and a third column worked out from both. */
const shopping = (third: string, work: (row: number) => string): Rows => [
  ["Ingredient", "Need (kg)", "In the van (kg)", third],
  ...INGREDIENTS.map((item, at) => [item, GRAMS[at]! / 100, at + 1, formula(work(at + 2), 0)]),
];

test.each([
  (row: number) => `MAX(0,B${row}-C${row})`,
  (row: number) => `ROUNDUP(MAX(B${row}-C${row},0),1)`,
  (row: number) => `IF(B${row}>C${row},B${row}-C${row},0)`,
])("what there is and what is missing are no amounts", (work) => {
  expect(amountsOf(shopping("Get (kg)", work))).toEqual([1]);
});

test("what differs between two recipes leaves both", () => {
  expect(amountsOf(shopping("Change (kg)", (row) => `B${row}-C${row}`))).toEqual([1, 2]);
});

/** What is in store of each, and how little of it makes one order more. */
const store = (heading: string): Rows => [
  ["Material", "On hand, kg", heading],
  ...INGREDIENTS.map((item, at) => [item, 20 - 3 * at, 5 - at]),
];

test.each(["Reorder below, kg", "Par level (kg)", "Mindestbestand kg", "nachbestellen ab (kg)"])(
  "how little there may be of each is no amount: %p",
  (heading) => {
    expect(amountsOf(store(heading))).toEqual([]);
  },
);

test("what is weighed beside what is in store is an amount", () => {
  expect(amountsOf(store("Batch 3, kg"))).toEqual([2]);
});
