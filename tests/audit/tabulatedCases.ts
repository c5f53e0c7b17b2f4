import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

// Answers as the functions give them, rounded.

/** Versions of an ice as an engineer tabulates them: letters, quantities, units, one column a version. */
const versions = (water: Rows[number][number]): Rows => [
  ["Sym", "Quantity", "Unit", "Lemon ice", "Lemon ice 2"],
  ["m1", "water", "g", 600, 500],
  ["m2", "sugar", "g", 150, 200],
  ["m3", "whole milk", "g", 100, 100],
  ["M", "Total mass", "g", formula("SUM(D2:D4)", 850), formula("SUM(E2:E4)", 800)],
  ["mw", "Mass of water", "g", formula('RIME.COMPONENT($B$2:$B$4,D2:D4,"water")', 688), water],
  ["mds", "Mass of dissolved solids", "g", 156, 206],
];

/** Water and sugar 4 to 1, which freezes at −1.5 °C: at −6 °C 70.7 % of the water is ice and 56.5 % of the mix. */
const curve = (mix: number): Rows => [
  ["Constituent", "Mass (g)", null, "T (°C)", "Ice, % of the water", "Ice, % of the mix"],
  ["water", 800, null, -6, 70.7, mix],
  ["sugar", 200],
  ["Sum", formula("SUM(B2:B3)", 1000)],
  [],
  ["Freezer (°C)", -18],
  ["Fridge (°C)", 4],
];

/** A recipe for 50 that is scaled to the meals that are booked. */
const scaled = (by: string, portions: Rows[number] = []): Rows => [
  ["Meals booked", 190],
  portions,
  ["Commodity", "Recipe for 50 (g)", "Weigh out (g)"],
  ["water", 2400, formula(`B4*${by}`, 9120)],
  ["sugar", 600, formula(`B5*${by}`, 2280)],
];

/** Tables as engineers and caterers make them. */
export const tabulatedCases: readonly RuleCase[] = [
  {
    ...{ rule: "water-not-counted", cells: ["E6"] },
    what: "water that leaves out the milk's, among versions below a heading of quantities",
    rows: versions(500),
  },
  {
    ...{ rule: "water-not-counted", cells: [] },
    what: "all of the water, among versions below a heading of quantities",
    rows: versions(588),
  },
  {
    ...{ rule: "formula-overwritten", cells: [] },
    what: "a typed number among formulas of which more is told",
    rows: versions(500),
  },
  {
    ...{ rule: "result-differs", cells: [] },
    what: "the answers of versions below a heading of quantities",
    rows: versions(588),
  },
  {
    ...{ rule: "ice-of-water-or-mix", cells: ["F2"] },
    what: "the share of the water in a curve's column of the mix, at the line's own temperature",
    rows: curve(70.7),
  },
  {
    ...{ rule: "ice-of-water-or-mix", cells: [] },
    what: "both shares of a curve, at the line's own temperature",
    rows: curve(56.5),
  },
  {
    ...{ rule: "hard-coded-number", cells: [] },
    what: "a recipe for 50 that is divided by 50",
    rows: scaled("$B$1/50"),
  },
  {
    ...{ rule: "hard-coded-number", cells: ["C4:C5"] },
    what: "a recipe for 50 that is divided by 50, which has a cell of its own",
    rows: scaled("$B$1/50", ["Portions of the recipe", 50]),
  },
  {
    ...{ rule: "hard-coded-number", cells: ["C4:C5"] },
    what: "a recipe for 50 that is scaled to 190 typed meals",
    rows: scaled("190/50"),
  },
  ...["pudding", "cake"].map((dish): RuleCase => ({
    ...{ rule: "ice-of-water-or-mix", cells: ["B6"] },
    what: `the water's share where that of the ${dish} is said`,
    rows: [
      ["Item", "g"],
      ["water", 800],
      ["sugar", 200],
      [],
      ["Water in a churn (g)", 800],
      [`Ice in the ${dish} at −6 °C (% of the ${dish})`, 70.7],
    ],
  })),
  {
    ...{ rule: "hidden-amount", cells: ["C2:C3"] },
    what: "one hidden column once, though it hides the water of syrups below, too",
    rows: [
      ["Ingredient", "Function", "Amount (g)"],
      ["water", "body", 800],
      ["sugar", "sweetness", 200],
      ["Total", null, formula("SUM(C2:C3)", 1000)],
      [],
      ["Syrup", "Sucrose (g)", "Water (g)"],
      ["light", 150, 500],
      ["heavy", 390, 500],
    ],
    extras: { hiddenColumns: new Set([2]) },
  },
];
