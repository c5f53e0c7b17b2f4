import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

// Expected numbers by i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

/** 10 g of salt in 500 g of water: 2 · 1.86 · 10/58.44/0.5 = 1.273 K. */
const worked = (change: Readonly<Record<string, Rows[number][number]>> = {}): Rows => [
  ["Worked example"],
  ["Dissolved substance", change["name"] ?? "sodium chloride"],
  ["Mass dissolved (g)", 10],
  ["Molar mass (g/mol)", change["molar mass"] ?? 58.44],
  ["van 't Hoff factor", change["particles"] ?? 2],
  [change["water"] ?? "Mass of water (g)", 500],
  ["Kf of water (K kg/mol)", change["constant"] ?? 1.86],
  ["Molality (mol/kg)", formula("B3/B4/(B6/1000)", 0.3422)],
  ["Depression (K)", change["depression"] ?? formula("B5*B7*B8", 1.273)],
  ["Freezing point (°C)", change["point"] ?? formula("-B9", -1.273)],
  ["By the ideal law; expect it within 0.2 K."],
];

/** Brine: 20 g of salt in 500 g of water, 2 · 1.86 · 20/58.44/0.5 = 2.546 K by the law; the real one gives 2.31 K. */
const strong = (promise: string): Rows => [
  ["Gelöster Stoff", "NaCl"],
  ["Einwaage", "m", 20, "g"],
  ["Molare Masse", "M", 58.44, "g/mol"],
  ["Ionen je Formel", "i", 2],
  ["Wassermenge", "m(W)", 500, "g"],
  ["Gefrierpunktserniedrigung", "ΔT", formula("C4*1.86*C2/C3/C5*1000", 2.546), "K"],
  [promise],
];

/** Two solutions beside each other; sucrose 50 g in 500 g: 0.543 K. */
const beside = (ions: number, point: number): Rows => [
  ["Quantity", "Solution 1", "Solution 2"],
  ["Solute", "sucrose", "sodium chloride"],
  ["Mass of solute in g", 50, 10],
  ["Molar mass in kg/mol", 0.3423, 0.05844],
  ["Ions per formula", 1, ions],
  ["Solvent (kg)", 0.5],
  ["Cryoscopic constant in °C·kg/mol", 1.86],
  ["Lowering of the freezing point (K)", 0.543, 1.273],
  ["Freezing point (°C)", point, -1.273],
];

/** Labels above their values, in three rows of pairs. */
const above = (molarMass: number): Rows => [
  ["Substance", "Mass (g)", "Molar mass (g/mol)"],
  ["sucrose", 50, molarMass],
  [],
  ["i", "Water (g)", "Kf"],
  [1, 500, 1.86],
  [],
  ["Molality (mol/kg)", "Depression (K)"],
  [0.292, 0.543],
];

const table = (water: string): Rows => [
  ["Solute", "Grams", "Molar mass (g/mol)", "i"],
  ["sucrose", 50, 342.3, 1],
  ["NaCl", 10, 58.44, 2],
  [],
  [water, 500],
  ["Kf (K·kg/mol)", 1.86],
];

/** Labelled data of a shop: no solution, though sugar, grams and water stand there. */
const shop: Rows = [
  ["Product", "sugar"],
  ["Price per kg", 1.2],
  ["Weight (g)", 1000],
  ["Water", 12],
  ["Yield (%)", 92],
  ["Delivered on", 45000],
  ["Batch", 3.35],
];

const CONSTANT = "constant-of-a-solute";
const IDEAL = "ideal-law-too-far-off";
const NO_UNIT = "input-without-unit";

/** Worked examples of a class that are labelled values, and labelled values that are none. */
export const workedExampleCases: readonly RuleCase[] = [
  {
    rule: CONSTANT,
    what: "a molar mass down a column",
    rows: worked({ "molar mass": 35.45 }),
    cells: ["B4"],
  },
  {
    rule: CONSTANT,
    what: "a molar mass that is only not calculated anew",
    rows: worked({ "molar mass": formula("50+8.44", 52.18) }),
    fresh: { B4: 58.44 },
    cells: [],
  },
  { rule: CONSTANT, what: "one particle of salt", rows: worked({ particles: 1 }), cells: ["B5"] },
  { rule: CONSTANT, what: "a right worked example", rows: worked(), cells: [] },
  { rule: CONSTANT, what: "one of two solutions", rows: beside(3, -0.543), cells: ["C5"] },
  { rule: CONSTANT, what: "molar masses in kg/mol", rows: beside(2, -0.543), cells: [] },
  { rule: CONSTANT, what: "a molar mass below its label", rows: above(180.16), cells: ["C2"] },
  { rule: CONSTANT, what: "values below their labels", rows: above(342.3), cells: [] },
  { rule: CONSTANT, what: "the labelled data of a shop", rows: shop, cells: [] },
  { rule: "freezing-point-sign", what: "one of two", rows: beside(2, 0.543), cells: ["B9"] },
  { rule: "freezing-point-sign", what: "two solutions", rows: beside(2, -0.543), cells: [] },
  {
    rule: "cryoscopic-constant",
    what: "Kf ten times too large down a column",
    rows: worked({ constant: 18.6 }),
    cells: ["B7"],
  },
  { rule: "cryoscopic-constant", what: "a right one", rows: worked(), cells: [] },
  {
    rule: "particles-not-counted",
    what: "a factor that the formula leaves out",
    rows: worked({ depression: formula("B7*B8", 0.636), point: formula("-B9", -0.636) }),
    cells: ["B9"],
  },
  { rule: "particles-not-counted", what: "a factor in use", rows: worked(), cells: [] },
  {
    rule: "inclusion-as-solute",
    what: "nuts dissolved in an example",
    rows: worked({ name: "hazelnuts", "molar mass": 342.3, particles: 1 }),
    cells: ["B4"],
  },
  { rule: NO_UNIT, what: "water", rows: worked({ water: "Mass of water" }), cells: ["B6"] },
  { rule: NO_UNIT, what: "water in grams", rows: worked(), cells: [] },
  { rule: NO_UNIT, what: "water below a table", rows: table("Wasser"), cells: ["B5"] },
  { rule: NO_UNIT, what: "water below, in grams", rows: table("Wasser (g)"), cells: [] },
  { rule: IDEAL, what: "0.1 K promised", rows: strong("Auf 0,1 K genau."), cells: ["C6"] },
  { rule: IDEAL, what: "1 K promised", rows: strong("Abweichung bis 1 K zugelassen."), cells: [] },
  { rule: IDEAL, what: "2 % promised", rows: strong("Ideal law, within 2 %."), cells: ["C6"] },
  ...[
    "The ideal law misses the real value by no more than 0.1 K here.",
    "Das ideale Gesetz liegt hier nicht mehr als 0,1 K falsch.",
  ].map((words): RuleCase => ({ rule: IDEAL, what: words, rows: strong(words), cells: ["C6"] })),
  {
    rule: IDEAL,
    what: "a lesson that misses something else",
    rows: strong("Who misses the hour reads on, at most 0.1 K is lost."),
    cells: [],
  },
  { rule: IDEAL, what: "15 % promised", rows: strong("Ideal law, good to 15 %."), cells: [] },
  {
    rule: IDEAL,
    what: "what a thermometer is good to",
    rows: strong("The thermometer reads to within 0.1 K."),
    cells: [],
  },
];
