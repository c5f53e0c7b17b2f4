import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const batches = (one: Rows[number][number], other: Rows[number][number]): Rows => [
  ["Batch (g)", one, null, "Batch (g)", other],
  [],
  ["Ingredient", "g", null, "Ingredient", "g"],
  ["water", 500, null, "whole milk", 600],
  ["sucrose", 150, null, "sucrose", 120],
  ["lemon juice", 40, null, "cream 35 % fat", 80],
];
const parts = (water: Rows[number][number], total: Rows[number][number]): Rows => [
  ["Ingredient", "Amount (g)", "Water (g)", "Cost"],
  ["whole milk", 500, water, formula("B2*0.002", 1)],
  ["cream 35 % fat", 100, formula("0.59*B3", 59), formula("B3*0.01", 1)],
  ["sucrose", 100, formula("0*B4", 0), formula("B4*0.005", 0.5)],
  ["Total", formula("SUM(B2:B4)", 700), total, formula("SUM(D2:D4)", 2.5)],
];
const whole = formula("0.88*B2", 440);

/** Three samples in one list, their sums in a table beside it. */
const samples = (...sums: Rows[number]): Rows => [
  ["Sample", "Ingredient", "% w/w", null, "Sample", "Product", "Sum (%)"],
  ["A", "water", 70, null, "A", "Lemon ice", sums[0] ?? null],
  ["A", "sucrose", 20, null, "B", "Milk ice", sums[1] ?? null],
  ["A", "lemon juice", 10, null, "C", "Plain ice", sums[2] ?? null],
  [],
  ["B", "whole milk", 75],
  ["B", "sucrose", 15],
  ["B", "cream 35 % fat", 10],
  [],
  ["C", "water", 80],
  ["C", "sucrose", 15],
  ["C", "dextrose monohydrate", 5],
];
const [sumOfA, sumOfC] = [formula("SUM(C2:C4)", 100), formula("SUM(C10:C12)", 100)];

/** Two mixes, each in a row of its own table, with the sum of it under one word. */
const tubs = (first: Rows[number][number], word = "Tub", other = "Tub"): Rows => [
  ["Lemon ice", "Water", "Sugar", "Lemon juice", word],
  ["kg", 1.2, 0.4, 0.14, first],
  ["€ per kg", 0.01, 1.2, 4, null],
  [],
  ["Milk ice", "Whole milk", "Sugar", "Cream 35 % fat", other],
  ["kg", 1.4, 0.3, 0.2, formula("SUM(B6:D6)", 1.9)],
];

/** A card with its names right of the grams, and the sum above both. */
const card = (sum: Rows[number][number], word: string): Rows => [
  [sum, word],
  ["g", "of"],
  [700, "water"],
  [220, "sucrose"],
  [80, "lemon juice"],
];

/** Two cards side by side; the first one's last name stands beside the other's sum. */
const cards: Rows = [
  ["grams", "of", null, "grams", "of"],
  [500, "water", null, 600, "whole milk"],
  [150, "sucrose", null, 120, "sucrose"],
  [40, "lemon juice", null, 80, "cream 35 % fat"],
  [60, "walnts", null, formula("SUM(D2:D4)", 800), "whole"],
  [formula("SUM(A2:A5)", 750), "whole"],
];

/** True and false examples of totals above their lists, left of them, and typed where others are sums. */
export const totalPlaceCases: readonly RuleCase[] = [
  {
    ...{ rule: "unknown-ingredient", cells: ["B5"], rows: cards },
    what: "a name beside the sum of the next list",
  },
  {
    ...{ rule: "total-incomplete", cells: [], rows: cards },
    what: "a sum that counts a line beside the sum of the next list",
  },
  {
    rule: "total-incomplete",
    what: "the size of a batch above its list that leaves out the last line",
    rows: batches(formula("SUM(B4:B5)", 650), formula("SUM(E4:E6)", 800)),
    cells: ["B1"],
  },
  {
    rule: "total-incomplete",
    what: "a batch typed above its list where the one beside is a sum",
    rows: batches(formula("SUM(B4:B6)", 690), 750),
    cells: ["E1"],
  },
  {
    rule: "total-incomplete",
    what: "typed batches above two lists, which may be what is wanted of them",
    rows: batches(1000, 2000),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "whole sums above their lists",
    rows: batches(formula("SUM(B4:B6)", 690), formula("SUM(E4:E6)", 800)),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "the water of a mix typed as less than its sum, in a row of sums",
    rows: parts(whole, 440),
    cells: ["C5"],
  },
  {
    rule: "total-incomplete",
    what: "the water of a mix typed as its sum",
    rows: parts(whole, 499),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a sum that leaves out a line whose formula gives 0 today",
    rows: parts(whole, formula("SUM(C2:C3)", 499)),
    cells: ["C5"],
  },
  {
    rule: "total-incomplete",
    what: "a column of per cent left of the names that is counted twice",
    rows: [
      ["% by mass", "g", "Ingredient"],
      [70, formula("A2*20", 1400), "water"],
      [20, formula("A3*20", 400), "sucrose"],
      [10, formula("A4*20", 200), "lemon juice"],
      [formula("SUM(A2:A4)", 100), formula("SUM(B2:B4)", 2000), "Total"],
      [formula("SUM(A2:A5)", 200), null, "Grand total"],
    ],
    cells: ["A6"],
  },
  {
    rule: "total-incomplete",
    what: "the alcohol of each day, one day without its first drink",
    rows: [
      ["Day", "Drink", "g", "% vol", "Alcohol (g)"],
      ["Friday", "vodka 40 %", 100, 40, formula("C2*0.333", 33.3)],
      [null, "rum 40 %", 50, 40, formula("C3*0.333", 16.65)],
      [null, "Sum", null, null, formula("SUM(E2:E3)", 49.95)],
      [],
      ["Saturday", "rum 40 %", 90, 40, formula("C6*0.333", 29.97)],
      [null, "vodka 40 %", 60, 40, formula("C7*0.333", 19.98)],
      [null, "gin 40 %", 60, 40, formula("C8*0.333", 19.98)],
      [null, "Sum", null, null, formula("SUM(E7:E8)", 39.96)],
    ],
    cells: ["E9"],
  },
  {
    rule: "total-incomplete",
    what: "a sum in a table of samples without one of three lines",
    rows: samples(sumOfA, formula("SUM(C6:C7)", 90), sumOfC),
    cells: ["G3"],
  },
  {
    rule: "total-incomplete",
    what: "a typed total in a table of samples where the others are sums",
    rows: samples(sumOfA, 94, sumOfC),
    cells: ["G3"],
  },
  {
    rule: "total-incomplete",
    what: "a right one among such sums",
    rows: samples(sumOfA, 100, sumOfC),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a number typed under the word that heads the sum of another mix",
    rows: tubs(1.86),
    cells: ["E2"],
  },
  ...[tubs(1.74), tubs(1.86, "Vodka"), tubs(12), tubs(1.86, "Lid", "Tub")].map(
    (rows, at): RuleCase => ({
      ...{ rule: "total-incomplete", rows, cells: [] },
      what: `one that fits, is an ingredient, is far off or stands under another word (${at + 1})`,
    }),
  ),
  {
    rule: "total-incomplete",
    what: "a number typed before the word for all above names right of their grams",
    rows: card(940, "altogether"),
    cells: ["A1"],
  },
  ...[card(1000, "altogether"), card(940, "Sunday"), card(12, "altogether")].map(
    (rows, at): RuleCase => ({
      ...{ rule: "total-incomplete", rows, cells: [] },
      what: `one there that fits, that no such word stands behind or that is far off (${at + 1})`,
    }),
  ),
];
