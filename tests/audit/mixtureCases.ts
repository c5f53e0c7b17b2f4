import type { RuleCase } from "./ruleCase";
import type { Rows } from "./bookOf";

const mix = (...lines: readonly (readonly [string, number])[]): Rows => [
  ["Ingredient", "Amount (g)"],
  ...lines,
];

/**
 * True and false examples of the rules about what dissolves and what sets. At 20 °C 203.9 g of sucrose, 91 g
 * of glucose, 19 g of lactose and 18 g of mannitol dissolve in 100 g of water (handbook figures).
 */
export const mixtureCases: readonly RuleCase[] = [
  {
    rule: "more-than-dissolves",
    what: "250 g of sucrose in 100 g of water",
    rows: mix(["Water", 100], ["Sucrose", 250], ["Lemon juice", 5]),
    cells: ["B3"],
  },
  {
    rule: "more-than-dissolves",
    what: "a syrup of two parts of sucrose to one of water, within what tables and scales tell",
    rows: mix(["Water", 500], ["Sucrose", 1040], ["Lemon juice", 2]),
    cells: [],
  },
  {
    rule: "more-than-dissolves",
    what: "what dissolves before freezing, though not in the cold",
    rows: mix(["Water", 300], ["Sucrose", 200], ["Glucose", 100]),
    cells: [],
  },
  {
    rule: "more-than-dissolves",
    what: "a recipe with an unknown ingredient that may be its water",
    rows: mix(["Moon dust", 300], ["Sucrose", 200], ["Glucose", 100]),
    cells: [],
  },
  {
    // Skim milk powder is about half lactose: 60 g in 500 g of water.
    rule: "lactose-may-feel-sandy",
    what: "much milk powder in water",
    rows: mix(["Water", 500], ["Skim milk powder", 120], ["Sucrose", 100]),
    cells: ["B3"],
  },
  {
    rule: "lactose-may-feel-sandy",
    what: "an ordinary milk ice",
    rows: mix(["Whole milk", 600], ["Skim milk powder", 30], ["Sucrose", 130]),
    cells: [],
  },
  ...[15, 40].map((lactose): RuleCase => ({
    // At 20 °C 19 g of lactose dissolve in 100 g of water.
    rule: lactose > 19 ? "more-than-dissolves" : "lactose-may-feel-sandy",
    what: `${lactose} g of lactose in a class's 100 g of water, which nobody eats`,
    rows: [
      ["Sugar", "Sugar (g)", "Water (g)", "Molar mass (g/mol)", "ΔT (K)"],
      ["lactose, anhydrous", lactose, 100, 342.3, (18.6 * lactose) / 342.3],
      ["sucrose", 20, 100, 342.3, (18.6 * 20) / 342.3],
    ],
    cells: lactose > 19 ? ["B2"] : [],
  })),
  {
    rule: "polyol-will-crystallise",
    what: "erythritol as the main sweetener",
    rows: mix(["Water", 700], ["Erythritol", 140], ["Lemon juice", 100]),
    cells: ["B3"],
  },
  {
    rule: "polyol-will-crystallise",
    what: "sucrose, below its line in the cold as it always is",
    rows: mix(["Water", 700], ["Sucrose", 140], ["Lemon juice", 100]),
    cells: [],
  },
  {
    rule: "polyol-will-crystallise",
    what: "a trace of mannitol",
    rows: mix(["Water", 500], ["Sucrose", 200], ["Mannitol", 2]),
    cells: [],
  },
  {
    rule: "too-much-alcohol-to-set",
    what: "nearly half of spirit",
    rows: mix(["Water", 300], ["Sucrose", 150], ["spirit 40 % vol", 400]),
    cells: ["B4"],
  },
  {
    rule: "too-much-alcohol-to-set",
    what: "a spoon of spirit",
    rows: mix(["Water", 600], ["Sucrose", 150], ["spirit 40 % vol", 20]),
    cells: [],
  },
  {
    rule: "too-much-alcohol-to-set",
    what: "a mix that is too soft without its alcohol, too",
    rows: mix(["Water", 200], ["Fructose", 300], ["spirit 40 % vol", 60]),
    cells: [],
  },
  {
    rule: "too-much-alcohol-to-set",
    what: "alcohol that a named target does not stand",
    rows: [
      ...mix(["Water", 500], ["Sucrose", 120], ["spirit 40 % vol", 250]),
      [],
      ["Serve as", "firm bar at −18"],
    ],
    cells: ["B4"],
  },
];
