import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const ROWS: Rows = [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Fructose", 60],
  ["Total", formula("SUM(B2:B4)", 710)],
];
const FILTER = [{ top: 0, left: 0, bottom: 3, right: 1 }];
const hiddenRows = new Set([3]);
const withTotal = (text: string, value: number): Rows => [
  ...ROWS.slice(0, 4),
  ["Total", formula(text, value)],
];

/** What else stands beside the list: a syrup, or what is poured at the table. */
const SYRUP: Rows = [
  ["Ingredient", "Amount (g)"],
  ["Water", 100],
  ["Sucrose", 80],
  ["Glucose", 40],
  ["Total", formula("SUM(E2:E4)", 220)],
];
const DRINKS: Rows = [
  ["Spirit", "Shot (g)", "ABV (%)"],
  ["Rum 40 %", 10, 40],
  ["Vodka 40 %", 10, 40],
  ["Gin 40 %", 10, 40],
];

/** A class sheet whose molar masses stand in column D. */
const classRows: Rows = [
  ["Ingredient", "g", "Moles", null],
  ["Water", 500, null, null],
  ["Sucrose", 34.23, formula("B3/D3", 0.1), 342.3],
  ["Glucose", 18.02, formula("B4/D4", 0.1), 180.16],
  ["Depression (K)", formula("1.86*SUM(C3:C4)/B2*1000", 0.744)],
];

const MIX_TABLE = {
  ...{ name: "Mix", range: { top: 0, left: 0, bottom: 3, right: 1 } },
  ...{ columns: ["Ingredient", "Amount (g)"], hasTotals: false },
};
const GRAMS = { name: "Grams", refersTo: "Sheet1!$B$2:$B$4", sheet: null };

/** True and false examples of the two rules about what is hidden. */
export const hiddenCases: readonly RuleCase[] = [
  {
    rule: "filtered-rows-in-sum",
    what: "a total over a row that a filter hides",
    rows: ROWS,
    cells: ["B5"],
    extras: { hiddenRows, filtered: FILTER },
  },
  {
    rule: "filtered-rows-in-sum",
    what: "a total of the rows shown",
    rows: withTotal("SUBTOTAL(109,B2:B4)", 650),
    cells: [],
    extras: { hiddenRows, filtered: FILTER },
  },
  {
    rule: "total-incomplete",
    what: "a total of the rows that a filter shows",
    rows: withTotal("SUBTOTAL(109,B2:B4)", 650),
    cells: [],
    extras: { hiddenRows, filtered: FILTER },
  },
  {
    rule: "filtered-rows-in-sum",
    what: "a filter that hides nothing of the sum",
    rows: withTotal("SUM(B2:B3)", 650),
    cells: [],
    extras: { hiddenRows, filtered: FILTER },
  },
  {
    rule: "filtered-rows-in-sum",
    what: "rows hidden by hand, of which another rule tells",
    rows: ROWS,
    cells: [],
    extras: { hiddenRows },
  },
  {
    rule: "filtered-rows-in-sum",
    what: "a total of a defined name over a row that a filter hides",
    rows: withTotal("SUM(Grams)", 710),
    cells: ["B5"],
    extras: { hiddenRows, filtered: FILTER },
    workbook: { names: [GRAMS] },
  },
  {
    rule: "filtered-rows-in-sum",
    what: "a total of a table's column over a row that a filter hides",
    rows: withTotal("SUM(Mix[Amount (g)])", 710),
    cells: ["B5"],
    extras: { hiddenRows, filtered: FILTER, tables: [MIX_TABLE] },
  },
  {
    rule: "filtered-rows-in-sum",
    what: "a sum of a row's own cells of a filtered table",
    rows: [...ROWS.slice(0, 4), ["Both", formula("SUM(Mix[@[Amount (g)]])", 710)]],
    cells: [],
    extras: { hiddenRows, filtered: FILTER, tables: [MIX_TABLE] },
  },
  {
    rule: "filtered-rows-in-sum",
    what: "a total on another sheet over a row that a filter hides",
    rows: {
      Sheet1: withTotal("SUBTOTAL(109,B2:B4)", 650),
      Week: [["Mix (g)", formula("SUM(Sheet1!B2:B4)", 710)]],
    },
    cells: ["B1"],
    extras: { hiddenRows, filtered: FILTER },
  },
  {
    rule: "hidden-amount",
    what: "a hidden sheet of prices that a cost reads by a defined name",
    rows: {
      Sheet1: [["Sugar, EUR/kg", 1.2]],
      Mix: [...ROWS, ["Sugar (EUR)", formula("SugarPrice*B3/1000", 0.18)]],
    },
    cells: ["B1"],
    extras: { hidden: true },
    workbook: { names: [{ name: "SugarPrice", refersTo: "Sheet1!$B$1", sheet: null }] },
  },
  {
    rule: "hidden-amount",
    what: "a hidden sheet of prices that a cost looks up",
    rows: {
      Sheet1: [
        ["Sucrose", 1.2],
        ["Fructose", 4.8],
      ],
      Mix: [...ROWS, ["Sugar (EUR)", formula("VLOOKUP(A3,Sheet1!A1:B2,2,FALSE)*B3/1000", 0.18)]],
    },
    cells: ["A1:B2"],
    extras: { hidden: true },
  },
  {
    rule: "hidden-amount",
    what: "a hidden sheet that nothing reads",
    rows: { Sheet1: [["Sugar, EUR/kg", 1.2]], Mix: ROWS },
    cells: [],
    extras: { hidden: true },
  },
  {
    rule: "hidden-amount",
    what: "an ingredient that a filter hides, of which another rule tells",
    rows: ROWS,
    cells: [],
    extras: { hiddenRows, filtered: FILTER },
  },
  {
    rule: "hidden-amount",
    what: "a hidden row told once, though two lists side by side have an ingredient in it",
    rows: ROWS.map((row, at) => [...row, null, ...(SYRUP[at] ?? [])]),
    cells: ["B4:E4"],
    extras: { hiddenRows },
  },
  {
    rule: "hidden-amount",
    what: "a hidden row in which a drink poured beside the mix stands",
    rows: ROWS.map((row, at) => [...row, null, ...(DRINKS[at] ?? [])]),
    cells: ["B4"],
    extras: { hiddenRows },
  },
  {
    rule: "hidden-amount",
    what: "a hidden row told once, though a total reads it",
    rows: ROWS,
    cells: ["B4"],
    extras: { hiddenRows },
  },
  {
    rule: "hidden-amount",
    what: "a hidden column of molar masses behind a depression",
    rows: classRows,
    cells: ["D3:D4"],
    extras: { hiddenColumns: new Set([3]) },
  },
  {
    rule: "hidden-amount",
    what: "a hidden row with a loss between list and answer",
    rows: [
      ...ROWS,
      ["Loss (g)", 45],
      ["Freezing point (°C)", formula("-1.86*B3/342.3/(B2-B6)*1000", -1.79)],
    ],
    cells: ["B6"],
    extras: { hiddenRows: new Set([5]) },
  },
  {
    rule: "hidden-amount",
    what: "a hidden sheet of constants behind a depression",
    rows: {
      Sheet1: [["Kf", 1.86]],
      Mix: [...ROWS.slice(0, 3), ["Depression (K)", formula("Sheet1!B1*B3/342.3/B2*1000", 1.63)]],
    },
    extras: { hidden: true },
    cells: ["B1"],
  },
  {
    rule: "hidden-amount",
    what: "a hidden column of notes",
    rows: classRows.map((row) => [...row, "checked"]),
    cells: [],
    extras: { hiddenColumns: new Set([4]) },
  },
];
