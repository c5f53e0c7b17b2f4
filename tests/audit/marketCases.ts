import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const ICE: Rows = [
  ["Ingredient", "Amount (g)"],
  ["water", 750],
  ["sucrose", 200],
  ["lemon juice", 50],
];

/** Days of a market: what was taken is the tubs sold times the price of one. */
const days = (wednesday: string): Rows => [
  ["A tub, £", 3.5],
  ["Day", "Tubs sold", "Takings, £"],
  ["Sat", 102, formula("B3*$B$1", 357)],
  ["Sun", 170, formula("B4*$B$1", 595)],
  ["Wed", 124, formula(wednesday, 434)],
  ["Fri", 100, formula("B6*$B$1", 350)],
  ["Tue", 60, formula("B7*$B$1", 210)],
  ["Mon", 80, formula("B8*$B$1", 280)],
  ["July", formula("SUM(B3:B8)", 636), formula("SUM(C3:C8)", 2226)],
];
/** As a table's rows it would be written with the table's columns, had anybody done so. */
const IN_TABLE = { asWritten: () => "[@[Tubs sold]]*$B$1" };
const FILTERED = {
  hiddenRows: new Set([3]),
  filtered: [{ top: 1, left: 0, bottom: 7, right: 2 }],
};

/** A tub of 2.5 l with a third of air: 2.5 · 1000 · 1.1 / 1.33 g. */
const tub = (label: string): Rows => [
  ["Tub holds (l)", 2.5],
  ["Air (%)", 33],
  [label, 1.1],
  ["Goes into the tub (g)", formula("B1*1000*B3/(1+B2/100)", 2067.7)],
  [],
  ...ICE,
];

/** 1000 g with 200 g of sucrose; no alcohol. The second number has a label of its own. */
const above = (label: string): Rows => [
  ["sugar to 100 g of water (g)", "water in a batch (g)", "alcohol in a batch (g)"],
  [25.2, 795.6, 0],
  ["kept in", label, -16],
  [],
  ...ICE,
];

/** Sheets beside those of the recipes, and what stands above these. */
export const marketCases: readonly RuleCase[] = [
  {
    ...{ rule: "reference-slips", cells: ["C5"], extras: IN_TABLE },
    ...{ what: "a $ lost in a table's plain formulas", rows: { Sheet1: days("B5*B1"), Ice: ICE } },
  },
  {
    ...{ rule: "reference-slips", cells: [], extras: IN_TABLE },
    ...{ what: "plain formulas in a table", rows: { Sheet1: days("B5*$B$1"), Ice: ICE } },
  },
  {
    ...{ rule: "filtered-rows-in-sum", cells: ["B9", "C9"], extras: FILTERED },
    ...{
      what: "days filtered on a sheet without recipe",
      rows: { Sheet1: days("B5*$B$1"), Ice: ICE },
    },
  },
  {
    ...{ rule: "filtered-rows-in-sum", cells: [], extras: FILTERED },
    ...{ what: "days filtered in a book without any recipe", rows: days("B5*$B$1") },
  },
  ...["Density, weighed in a jug", "Dichte der Mischung"].map((label) => ({
    ...{ rule: "input-without-unit", cells: ["B3"], what: label, rows: tub(label) },
  })),
  ...["Density (g/ml)", "relative density"].map((label) => ({
    ...{ rule: "input-without-unit", cells: [], what: label, rows: tub(label) },
  })),
  {
    ...{ rule: "result-differs", cells: [] },
    ...{ what: "a number with its own label below an answer", rows: above("cart kept at (°C)") },
  },
  {
    ...{ rule: "ambiguous-ingredient", cells: [] },
    what: "bottles with their strength beside them",
    rows: [
      ["Bottle", "% vol", "per guest (g)"],
      ["Gin", 40, 9],
      ["Brandy", 36, 19],
      ["Orange liqueur", 38, 20],
    ],
  },
  {
    ...{ rule: "ambiguous-ingredient", cells: ["A3"] },
    what: "a gin of which no strength is told, in a mix",
    rows: [
      ["Ingredient", "g"],
      ["Water", 500],
      ["Gin", 40],
      ["Sucrose", 120],
    ],
  },
];
