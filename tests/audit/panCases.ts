import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

// By i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

interface Changed {
  readonly molar?: number;
  readonly ions?: number;
  readonly constant?: number;
  readonly point?: number;
}

/**
 * Two substances in one pot of 750 g: 91/342.3 + 2 · 7/58.44 = 0.5054 mol of particles, 1.253 K. No label says
 * mass or moles; the formulas do.
 */
const pot = ({ molar = 342.3, ions = 2, constant = 1.86, point = -1.253 }: Changed = {}): Rows => [
  ["", "sucrose", "sodium chloride"],
  ["Tipped in", 91, 7],
  ["One whole mole", molar, 58.44],
  ["Falls into", 1, ions],
  ["Counts as", formula("B2/B3*B4", 0.2658), formula("C2/C3*C4", 0.2396)],
  ["Both", formula("SUM(B5:C5)", 0.5054)],
  [],
  ["Water in the pot (g)", 750],
  ["Kf (K·kg/mol)", constant],
  ["Freezing point lower by (K)", formula("B9*B6/B8*1000", 1.253)],
  ["Pot freezes at (°C)", formula("-B10", point)],
  ["Ideal law, good to 0.2 K."],
];

/** Questions down a page, each with its own data; 39 g of sucrose in 400 g: 0.53 K. */
const page = (molar = 342.3, perWater = 105): Rows => [
  ["1. Ein Sirup wird gekocht."],
  [null, "Zucker darin", 420, "g"],
  [null, "Wasser darin", 400, "g"],
  ["a", "Wie viel Zucker kommt auf 100 g Wasser?", formula("C2/C3*100", perWater), "g"],
  ["b", "Massenanteil des Zuckers im Sirup", formula("C2/(C2+C3)*100", 51.22), "%"],
  [],
  ["2. Etwas wird in Wasser gerührt."],
  [null, "Es ist", "Saccharose"],
  [null, "Davon", 39, "g"],
  [null, "Ein Mol wiegt", molar, "g/mol"],
  [null, "Wasser", 400, "g"],
  [null, "Kf", 1.86, "K·kg/mol"],
  ["a", "Stoffmenge", formula("C9/C10", 0.1139), "mol"],
  ["b", "Um wie viel sinkt der Gefrierpunkt?", formula("C12*C13/(C11/1000)", 0.53), "K"],
  ["c", "Es gefriert bei", formula("-C14", -0.53), "°C"],
  ["Rechnung nach dem idealen Gesetz, auf 0,2 K genau."],
];

/** One syrup a row; what the last columns hold is worked out from the first ones. */
const syrups = (third: string): Rows => [
  ["Syrup for", "Sugar (g)", third, "Strength (%)"],
  ["Sorbet", 220, 500, formula("B2/(B2+C2)*100", 30.56)],
  ["Glaze", 500, 700, formula("B3/(B3+C3)*100", 41.67)],
  ["Fruit", 300, 700, formula("B4/(B4+C4)*100", 30)],
];

const brine = (water: number, salt: number, name = "salt"): Rows => [
  ["Tank", "kg"],
  ["water", water],
  [name, salt],
  ["Freezes at (°C)", formula("RIME.FREEZINGPOINT(A2:A3,B2:B3)", -18.1)],
];

/** A beaker a row, all with the same water. */
const beakers = (water: string): Rows => [
  [water, 250],
  ["Kf (K·kg/mol)", 1.86],
  [],
  ["Solute", "Grams in (g)", "Molar mass (g/mol)", "i", "Freezing point (°C)"],
  ["sucrose", 16, 342.3, 1, formula("-B2*B5/C5/B1*1000*D5", -0.348)],
  ["fructose", 8, 180.16, 1, formula("-B2*B6/C6/B1*1000*D6", -0.33)],
  ["Worked out by the ideal law."],
];

const CONSTANT = "constant-of-a-solute";

/** Solutions that words alone do not tell, and brines and syrups. */
export const panCases: readonly RuleCase[] = [
  { rule: CONSTANT, what: "a molar mass in a pot", rows: pot({ molar: 180.16 }), cells: ["B3"] },
  { rule: CONSTANT, what: "particles in a pot", rows: pot({ ions: 3 }), cells: ["C4"] },
  { rule: CONSTANT, what: "a right pot", rows: pot(), cells: [] },
  { rule: "result-differs", what: "a right pot of two", rows: pot(), cells: [] },
  { rule: "result-differs", what: "a wrong pot", rows: pot({ point: -2.4 }), cells: ["B11"] },
  { rule: "freezing-point-sign", what: "a pot", rows: pot({ point: 1.253 }), cells: ["B11"] },
  { rule: "cryoscopic-constant", what: "a pot", rows: pot({ constant: 18.6 }), cells: ["B9"] },
  { rule: CONSTANT, what: "a question's molar mass", rows: page(180.16), cells: ["C10"] },
  { rule: CONSTANT, what: "a right page of questions", rows: page(), cells: [] },
  { rule: "result-differs", what: "a right page of questions", rows: page(), cells: [] },
  { rule: "per-water-or-per-mix", what: "a right syrup", rows: page(), cells: [] },
  {
    rule: "per-water-or-per-mix",
    what: "a syrup's share for what goes with its water",
    rows: page(342.3, 51.22),
    cells: ["C4"],
  },
  {
    rule: "unknown-ingredient",
    what: "a column worked out from those beside it",
    rows: syrups("Water (g)"),
    cells: [],
  },
  {
    rule: "unknown-ingredient",
    what: "one of two lines that a function reads",
    rows: brine(9.5, 2.5, "slat of the sea"),
    cells: ["A3"],
  },
  { rule: "mass-units-mixed", what: "grams in a brine", rows: brine(9.5, 2550), cells: ["B3"] },
  { rule: "mass-units-mixed", what: "a strong brine", rows: brine(9.5, 2.55), cells: [] },
  {
    rule: "input-without-unit",
    what: "the water of every beaker",
    rows: beakers("Water in each"),
    cells: ["B1"],
  },
  {
    rule: "input-without-unit",
    what: "the same in grams",
    rows: beakers("Water in each (g)"),
    cells: [],
  },
  {
    rule: "caution-not-named",
    what: "allergens after a label",
    rows: [
      ["Ingredient", "Amount (g)"],
      ["Whole milk", 500],
      ["Sucrose", 100],
      ["Sticker on the tub: milk."],
    ],
    cells: [],
  },
];
