import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Answers before their labels, above a list whose amounts stand left of its names. */
const before = (pointC: number, further: Rows[number] = []): Rows => [
  [pointC, null, "Freezing point (°C)", ...further],
  [],
  ["Grams", null, "Ingredient"],
  [600, null, "Water"],
  [150, null, "Sucrose"],
];

/** A list with shares and the kilograms made from them; the answer reads the shares. */
const shares = (point: number): Rows => [
  ["Batch (kg)", 10],
  [],
  ["Ingredient", "Share", "kg"],
  [
    "Water",
    0.8,
    formula("B4*$B$1", 8),
    null,
    "Freezing point (°C)",
    formula("RIME.FREEZINGPOINT(A4:A5,B4:B5)", point),
  ],
  ["Sucrose", 0.2, formula("B5*$B$1", 2)],
];

const drinks = (alcohol: Rows[number][number]): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 600],
  ["Sucrose", 150],
  ["Vodka 40 %", 60],
  [],
  ["Alcohol (g)", alcohol],
  ["Price (EUR)", { value: 3, formula: "[1]Prices!B2" }],
];

/** Water with little sugar, far too hard for that target. */
const targeted = (label: string | null): Rows => [
  [null, null, null, "Grams", "Ingredient"],
  [label, "spread with the spatula", null, 600, "Water"],
  ["Price (EUR)", 4.5, null, 30, "Sucrose"],
];

/** Drinks by the cup, what they are sold as in the first column; the alcohol is summed below. */
const poured = (sum: string, label = "Alcohol in all"): Rows => [
  ["Sold as", "Drink", "% vol", "Poured (g)", "Alcohol (g)"],
  ["Lime granita", "Vodka 40 %", 40, 100, 33.3],
  ["Coffee granita", "Vodka 37.5 %", 37.5, 200, 62.2],
  ["Cherry cup", "Liqueur 25 %", 25, 300, 61.1],
  [label, null, null, null, formula(sum, sum.endsWith("4)") ? 156.6 : 95.5)],
];

const pouredAcross = (sum: string): Rows => [
  ["Drink", "Vodka 40 %", "Vodka 37.5 %", "Liqueur 25 %", "All"],
  ["% vol", 40, 37.5, 25],
  ["Poured (g)", 100, 200, 300],
  ["Alcohol (g)", 33.3, 62.2, 61.1, formula(sum, sum.includes("D4") ? 156.6 : 95.5)],
];

/** Where answers stand, and which recipe they are about. */
export const answerCases: readonly RuleCase[] = [
  {
    rule: "freezing-point-sign",
    what: "an answer left of its label",
    rows: before(1.4),
    cells: ["A1"],
  },
  {
    rule: "freezing-point-sign",
    what: "an answer left of its label that is right, and a number before a label with its own answer",
    rows: { Right: before(-1.4), Two: before(1.4, [-1.4]) },
    cells: [],
  },
  {
    rule: "freezing-point-sign",
    what: "an answer that reads the shares of the recipe beside it",
    rows: shares(1.4),
    cells: ["F4"],
  },
  {
    rule: "freezing-point-sign",
    what: "the same below zero",
    rows: shares(-1.4),
    cells: [],
  },
  {
    rule: "value-from-outside",
    what: "the alcohol of a recipe from another workbook, and not a price",
    rows: drinks({ value: 20, formula: "[1]Bar!B2" }),
    cells: ["B6"],
  },
  { rule: "value-from-outside", what: "alcohol that was typed", rows: drinks(20), cells: [] },
  {
    rule: "value-from-outside",
    what: "a share from another workbook beside the kilograms made from it",
    rows: [
      ["Ingredient", "Mass fraction", "kg"],
      ["Water", { value: 0.8, formula: "[1]Mixes!B2" }, formula("B2*10", 8)],
      ["Sucrose", 0.2, formula("B3*10", 2)],
    ],
    cells: ["B2"],
  },
  {
    rule: "more-digits-than-known",
    what: "a share beside the kilograms made from it",
    rows: [
      ["Ingredient", "Mass fraction", "kg"],
      ["Water", { value: 0.800123456, format: "0.0%" }, formula("B2*10", 8.00123456)],
      ["Sucrose", { value: 0.199876, format: "0.0%" }, formula("B3*10", 1.99876)],
    ],
    cells: ["B2", "B3"],
  },
  {
    rule: "misses-its-target",
    what: "a target behind a label of its own left of the list",
    rows: targeted("Kept as"),
    cells: ["B2"],
  },
  {
    rule: "misses-its-target",
    what: "the same words as the title of another page, and without a label",
    rows: { Page: targeted("See page"), Alone: targeted(null) },
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "the alcohol of drinks, below them and beside them",
    rows: { Down: poured("SUM(E2:E3)"), Across: pouredAcross("SUM(B4:C4)") },
    cells: ["E5", "E4"],
  },
  {
    rule: "total-incomplete",
    what: "the whole alcohol of drinks, and that of some without a word about all",
    rows: {
      Down: poured("SUM(E2:E4)"),
      Across: pouredAcross("SUM(B4:D4)"),
      Some: poured("SUM(E2:E3)", "Spirits only"),
    },
    cells: [],
  },
];
