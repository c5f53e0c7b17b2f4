import type { Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const batch = (shares: readonly number[]): Rows => [
  ["Batch (g)", 2000],
  ["Per cent", "Ingredient", "Grams"],
  [shares[0]!, "water", { formula: "$B$1*A3/100", value: 20 * shares[0]! }],
  [shares[1]!, "sugar", { formula: "$B$1*A4/100", value: 20 * shares[1]! }],
  [shares[2]!, "lemon juice", { formula: "$B$1*A5/100", value: 20 * shares[2]! }],
];

const fractions = (shares: readonly number[]): Rows => [
  ["Component", "Mass fraction", "Pilot (g)"],
  ["water", shares[0]!, { formula: "750*B2", value: 750 * shares[0]! }],
  ["sugar", shares[1]!, { formula: "750*B3", value: 750 * shares[1]! }],
  ["lemon juice", shares[2]!, { formula: "750*B4", value: 750 * shares[2]! }],
];

const syrup = (row: number, sugar: number, share?: number): Rows[number] => [
  ...[200, sugar, { formula: `100*B${row}/A${row}`, value: sugar / 2 }],
  share ?? {
    formula: `100*B${row}/(A${row}+B${row})`,
    value: (100 * sugar) / (200 + sugar),
  },
];
const SYRUPS: Rows[number] = [
  ...["Water (g)", "Sucrose (g)", "g sucrose per 100 g water", "Sucrose, % m/m"],
];
const syrups: Rows = [SYRUPS, syrup(2, 50), syrup(3, 75), syrup(4, 100), syrup(5, 150)];
// 100 g in 300 g are 33.33 %; 50 g come to 100 g of water.
const swapped: Rows = [SYRUPS, syrup(2, 50), syrup(3, 75), syrup(4, 100, 50), syrup(5, 150)];

const flasks = (perWater: readonly number[]): Rows => [
  ["Water in every flask (g)", 100],
  [],
  ["Syrup", "I", "II", "III"],
  ["Water (g)", 200, 400, 250],
  ["Sucrose (g)", 100, 100, 200],
  ["Sucrose (g per 100 g water)", ...perWater],
  ["Sucrose (% by mass)", 33.3, 20, 44.4],
];

const shelf = (share: number): Rows => [
  ["Sirup", "Saccharose (g)", "Wasser (g)", "g Zucker auf 100 g Wasser"],
  ["leicht", 100, 500, 20],
  ["mittel", 200, 500, share],
  ["schwer", 300, 500, 60],
];

const frozen = (label: string, temperature: number): Rows => [
  ["Ingredient", "g"],
  ["Water", 600],
  ["Sucrose", 150],
  ["Lemon juice", 50],
  [],
  [label, temperature],
  ["Share of the water frozen", { formula: 'RIME.ICEFRACTION(A2:A4,B2:B4,B6,"water")', value: 0 }],
];

const twice = (first: number, again: number): Rows => [
  ["Zutat", "Prozent (m/m)"],
  ["Wasser", first],
  ["Zucker", 14.6],
  ["Zitronensaft", 8.7],
  ["Wasser", again],
];

/** Shares with grams calculated from them, tables of syrups; all figures by arithmetic. */
export const shareCases: readonly RuleCase[] = [
  {
    ...{ rule: "percent-and-fraction", cells: ["A4"] },
    ...{ what: "a fraction among per cent left of the names", rows: batch([70, 0.25, 5]) },
  },
  {
    ...{ rule: "percent-and-fraction", cells: [], what: "per cent left of the names" },
    rows: batch([70, 25, 5]),
  },
  {
    ...{ rule: "percent-and-fraction", cells: ["B3"] },
    ...{ what: "per cent among mass fractions", rows: fractions([0.7, 25, 0.05]) },
  },
  {
    ...{ rule: "mass-units-mixed", cells: [], what: "grams that follow from a wrong share" },
    rows: fractions([0.7, 25, 0.05]),
  },
  {
    ...{ rule: "more-digits-than-known", cells: ["A3"] },
    ...{ what: "a share left of the names", rows: batch([70.012345, 25, 5]) },
  },
  {
    ...{ rule: "per-water-or-per-mix", cells: ["D4"] },
    ...{ what: "g per 100 g of water typed among formulas for % m/m", rows: swapped },
  },
  {
    ...{ rule: "formula-overwritten", cells: [], what: "a number of which more is said" },
    rows: swapped,
  },
  {
    ...{ rule: "per-water-or-per-mix", cells: [], what: "syrups of four strengths" },
    rows: syrups,
  },
  {
    ...{ rule: "per-water-or-per-mix", cells: ["C6"] },
    ...{ what: "syrups by Roman numbers below another table", rows: flasks([50, 20, 80]) },
  },
  {
    ...{ rule: "result-differs", cells: [], what: "syrups by Roman numbers, all right" },
    rows: flasks([50, 25, 80]),
  },
  {
    ...{ rule: "per-water-or-per-mix", cells: ["D3"] },
    ...{ what: "a syrup that is called medium, no mean", rows: shelf(28.6) },
  },
  {
    ...{ rule: "per-water-or-per-mix", cells: ["B4"] },
    what: "all that is dissolved: 150 g of sugar in 500 g of water are 23.1 % of the mix",
    rows: [
      ["Ingredient", "g"],
      ["Water", 500],
      ["Sucrose", 150],
      ["Dissolved per 100 g water (g)", 23.1],
    ],
  },
  {
    ...{ rule: "mass-units-mixed", cells: [], what: "a thin syrup among thick ones" },
    rows: [SYRUPS, syrup(2, 10), syrup(3, 90), syrup(4, 100), syrup(5, 110)],
  },
  {
    ...{ rule: "temperature-units-mixed", cells: ["B6"] },
    ...{ what: "ice asked for at 10 °F", rows: frozen("Storage temperature (°C)", 10) },
  },
  {
    ...{ rule: "temperature-units-mixed", cells: [], what: "ice asked for below freezing" },
    rows: frozen("Storage temperature (°C)", -12),
  },
  {
    ...{ rule: "ingredient-twice", cells: ["A5"], what: "shares rounded to fit their sum" },
    rows: twice(38.3, 38.4),
  },
  {
    ...{ rule: "ingredient-twice", cells: [], what: "shares of two additions" },
    rows: twice(40, 36.7),
  },
];
