import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

type Cell = ReturnType<typeof formula> | number;

/** Salt in three tubes beside each other by n·i·Kf/kg, Kf = 1.86 K·kg/mol; the moles of the second as given. */
const tubes = (moles: Cell, kf = "Kf of water (K·kg/mol)"): Rows => {
  const grams = [3, 4, 6];
  const lower = grams.map((mass) => (2 * 1.86 * mass * 5) / 58.44);
  const letters = ["B", "C", "D"];
  const each = (write: (letter: string, at: number) => Cell) => letters.map(write);
  return [
    [kf, 1.86],
    [],
    ["Tube", "T1", "T2", "T3"],
    ["solute", ...letters.map(() => "sodium chloride")],
    ["mass of solute (g)", ...grams],
    ["mass of water (g)", 200, 200, 200],
    ["molar mass (g/mol)", 58.44, 58.44, 58.44],
    ["particles per formula unit", 2, 2, 2],
    [
      "moles of solute (mol)",
      ...each((of, at) => (at === 1 ? moles : formula(`${of}5/${of}7`, (grams[at] ?? 0) / 58.44))),
    ],
    ["ΔT (K)", ...each((of, at) => formula(`${of}8*$B$1*${of}9/${of}6*1000`, lower[at] ?? 0))],
    ["freezing temperature (°C)", ...each((of, at) => formula(`0-${of}10`, -(lower[at] ?? 0)))],
    ["Taken as ideal solutions; within 0.5 K."],
  ];
};
const RIGHT = formula("C5/C7", 4 / 58.44);

/** 36 g of sucrose to 140 g of water is 25.7 g to 100 g of water, 20.5 % of the syrup. */
const syrups = (share: number, heads = ["g sucrose", "g water"]): Rows => [
  ["Syrup", ...heads, "g sucrose per 100 g solution (%)", "g sucrose per 100 g water"],
  ["A", 21, 130, 13.9, 16.2],
  ["B", 36, 140, share, 25.7],
  ["C", 52, 130, 28.6, 40],
];

/** A flavour in a row, its answers below; the last ingredient as given. */
const tank = ([name, kilos]: readonly [string, number], first = "blueberries"): Rows => [
  ["Flavour 3"],
  ["One tank", first, "water", "sugar", name, "Tank holds"],
  ["kg", 3.68, 1.66, 0.84, kilos, formula("SUM(B3:E3)", 6.18 + kilos)],
  [],
  ["Dry matter in 100 g, g", 24],
  ["Made on shelf no.", 36],
  ["Tubs from it", 48],
];

export const tubeCases: readonly RuleCase[] = [
  {
    rule: "formula-overwritten",
    what: "a number in a row of formulas across the tubes of a practical",
    rows: tubes(0.0684),
    cells: ["C9"],
  },
  {
    rule: "inconsistent-formula",
    what: "another formula in a row across tubes",
    rows: tubes(formula("B5/C7", 3 / 58.44)),
    cells: ["C9"],
  },
  { rule: "formula-overwritten", what: "rows filled across tubes", rows: tubes(RIGHT), cells: [] },
  { rule: "inconsistent-formula", what: "rows filled across tubes", rows: tubes(RIGHT), cells: [] },
  {
    rule: "input-without-unit",
    what: "a cryoscopic constant without a unit",
    rows: tubes(RIGHT, "Kf of water"),
    cells: ["B1"],
  },
  {
    rule: "input-without-unit",
    what: "a bare Kf, once",
    rows: tubes(RIGHT, "Kf"),
    cells: ["B1"],
  },
  {
    rule: "input-without-unit",
    what: "a cryoscopic constant in K kg mol⁻¹",
    rows: tubes(RIGHT, "Kf of water / K kg mol⁻¹"),
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "a row of kilograms that is only called an amount, at its title",
    rows: [
      ["One tank", "whole milk", "sugar", "water"],
      ["Amount", 4.1, 0.8, 1.2],
    ],
    cells: ["A2"],
  },
  {
    rule: "input-without-unit",
    what: "a row of kilograms that is called so",
    rows: [
      ["One tank", "whole milk", "sugar", "water"],
      ["kg", 4.1, 0.8, 1.2],
    ],
    cells: [],
  },
  ...[
    ["g sucrose", "g water"],
    ["Gramm Zucker", "Gramm Wasser"],
    ["g of sucrose", "g of water"],
  ].map((heads): RuleCase => ({
    rule: "per-water-or-per-mix",
    what: `a share of a syrup that is per water, under the heading ${heads[0]}`,
    rows: syrups(25.7, heads),
    cells: ["D3"],
  })),
  {
    rule: "per-water-or-per-mix",
    what: "shares of syrups under headings that begin with the unit",
    rows: syrups(20.5),
    cells: [],
  },
  {
    rule: "ingredient-twice",
    what: "a column copied in a row of amounts",
    rows: tank(["sugar", 0.84]),
    cells: ["E2"],
  },
  {
    rule: "ingredient-twice",
    what: "sugar that is added twice in a row of amounts, not alike",
    rows: tank(["sugar", 0.2]),
    cells: [],
  },
  {
    rule: "unknown-ingredient",
    what: "a misspelt name before the others in a row of amounts, answers below it",
    rows: tank(["lemon juice", 0.1], "blubberies"),
    cells: ["B2"],
  },
  {
    rule: "total-incomplete",
    what: "a total that counts a misspelt name, answers below it",
    rows: tank(["lemon juice", 0.1], "blubberies"),
    cells: [],
  },
];
