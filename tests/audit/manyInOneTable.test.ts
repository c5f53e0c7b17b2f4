import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

// By i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

/** 41/180.16 + 2 · 9/58.44 + 60/342.3 = 0.7109 mol of particles in 2 kg of water: 0.661 K. */
const pot = (molar = 180.16): Rows => [
  ["Wasser im Topf (g)", 2000],
  ["Kf (K·kg/mol)", 1.86],
  [],
  ["Stoff", "Fruktose", "Natriumchlorid", "Saccharose", "zusammen"],
  ["Einwaage (g)", 41, 9, 60, formula("SUM(B5:D5)", 110)],
  ["Molare Masse M (g/mol)", molar, 58.44, 342.3],
  ["Teilchen je Formeleinheit i", 1, 2, 1],
  [
    "Teilchen (mol)",
    formula("B5/B6*B7", 41 / molar),
    formula("C5/C6*C7", 0.308),
    formula("D5/D6*D7", 0.1753),
    formula("SUM(B8:D8)", 0.4833 + 41 / molar),
  ],
  [],
  ["Gefrierpunktserniedrigung ΔT (K)", formula("B2*E8/(B1/1000)", 0.93 * (0.4833 + 41 / molar))],
  ["Gefrierpunkt (°C)", formula("-B10", -0.93 * (0.4833 + 41 / molar))],
  ["Wir rechnen ideal, genau auf 0,2 K."],
];

/** Sugar syrups, one a row; both ways of saying how strong they are follow from grams. */
const syrups = (perWater = 75): Rows => [
  ["Use", "Water (g)", "Sucrose (g)", "Sucrose (% by mass)", "Sucrose to 100 g of water (g)"],
  ["brushing", 500, 250, formula("100*C2/(B2+C2)", 33.333), formula("100*C2/B2", 50)],
  ["fruit", 500, 375, formula("100*C3/(B3+C3)", 42.857), formula("100*C3/B3", perWater)],
  ["sorbet", 500, 500, formula("100*C4/(B4+C4)", 50), formula("100*C4/B4", 100)],
  ["candying", 500, 625, formula("100*C5/(B5+C5)", 55.556), formula("100*C5/B5", 125)],
];

/** Two beakers worked out step by step: 20/342.3/0.15 kg and 2 · 3/58.44/0.4 kg. */
const steps = (molar = 342.3): Rows => [
  ["Kf of water", 1.86, "K·kg/mol"],
  [],
  ["Team", "Penguins", "Seals", "Unit"],
  ["What went in", "sucrose", "sodium chloride"],
  ["How much of it", 20, 3, "g"],
  ["Water in the beaker", 150, 400, "g"],
  ["Look up: mass of one mole", molar, 58.44, "g/mol"],
  ["Look up: bits made by one", 1, 2],
  [
    "1. Moles = grams ÷ mass of one mole",
    formula("B5/B7", 20 / molar),
    formula("C5/C7", 0.0513),
    "mol",
  ],
  [
    "2. Moles of bits = moles × bits",
    formula("B9*B8", 20 / molar),
    formula("C9*C8", 0.1027),
    "mol",
  ],
  [
    "3. Per kilogram of water",
    formula("B10/(B6/1000)", 133.33 / molar),
    formula("C10/(C6/1000)", 0.2567),
    "mol/kg",
  ],
  ["4. Freezing point drops by", formula("B11*B1", 248 / molar), formula("C11*B1", 0.4774), "K"],
  ["5. So it freezes at", formula("-B12", -248 / molar), formula("-C12", -0.4774), "°C"],
  ["Right to about 0.3 K by this law."],
];

const tried = (what: string, rows: Rows, ...found: string[]): Tried => ({
  ...{ what, sheets: { Sheet: rows }, found },
});

describe("Several substances, syrups or steps in one table", () => {
  test.each<Tried>([
    tried("substances in columns with a column that adds them up are one pot", pot()),
    tried("one of them with a wrong molar mass", pot(342.3), "constant-of-a-solute Sheet!B6"),
    tried("a name that heads its shares again is no ingredient", syrups()),
    tried(
      "grams per 100 g of syrup as those of water",
      syrups(42.857),
      "per-water-or-per-mix Sheet!E3",
    ),
    tried("steps named by what they give", steps()),
    tried(
      "a wrong mass of one mole among them",
      steps(324.3),
      ...["constant-of-a-solute Sheet!B7", "result-differs Sheet!B11"],
    ),
  ])("$what", expectFound);
});
