import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 50 g of sucrose and 5 g of salt in 500 g of water by i·Kf·m: 1.86 · (0.1461 + 0.1711) / 0.5 = 1.18 K. */
const sheet = (kf: number, saltMoles = "B5/C5*D5", depressionK = 1.18): Rows => [
  ["Freezing-point lab"],
  [],
  ["Solute", "Grams", "Molar mass (g/mol)", "Particles i", "Moles of particles (mol)"],
  ["sucrose", 50, 342.3, 1, formula("B4/C4*D4", 0.1461)],
  ["sodium chloride", 5, 58.44, 2, formula(saltMoles, saltMoles.includes("D5") ? 0.1711 : 0.0856)],
  [],
  [],
  ["Water (g)", 500],
  ["Kf of water (K·kg/mol)", kf],
  ["Freezing-point depression (K)", formula("$B$9*SUM(E4:E5)/(B8/1000)", depressionK)],
  ["Freezing point (°C)", formula("-B10", -depressionK)],
];
const syrups = (perWater: number): Rows => [
  ["Syrup", "Sucrose (g)", "Water (g)", "g sugar per 100 g water"],
  ["a", 50, 100, 50],
  ["b", 60, 100, perWater],
  ["c", 70, 100, 70],
];

/** True and false examples on sheets of a class. */
export const classCases: readonly RuleCase[] = [
  { rule: "cryoscopic-constant", what: "Kf of benzene", rows: sheet(5.12), cells: ["B9"] },
  { rule: "cryoscopic-constant", what: "the constant of a class", rows: sheet(1.86), cells: [] },
  { rule: "result-differs", what: "the sheet of a class", rows: sheet(1.86), cells: [] },
  {
    rule: "particles-not-counted",
    what: "moles of particles without their factor",
    rows: sheet(1.86, "B5/C5", 0.862),
    cells: ["E5"],
  },
  {
    rule: "per-water-or-per-mix",
    what: "one syrup by the mass of the mix",
    rows: syrups(37.5),
    cells: ["D3"],
  },
  { rule: "per-water-or-per-mix", what: "syrups by their water", rows: syrups(60), cells: [] },
];
