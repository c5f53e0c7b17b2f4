import type { ShortCell } from "../../src/workbook/sheetFromRows";
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
/** The same sheet whose last line is a link to the depression, under a label. */
const shown = (label: string, link = "B10", lowering = "Lowered by (K)"): Rows => [
  ...sheet(1.86).slice(0, 9),
  [lowering, formula("$B$9*SUM(E4:E5)/(B8/1000)", 1.18)],
  [label, formula(link, link.startsWith("-") ? -1.18 : 1.18)],
];
const syrups = (perWater: number): Rows => [
  ["Syrup", "Sucrose (g)", "Water (g)", "g sugar per 100 g water"],
  ["a", 50, 100, 50],
  ["b", 60, 100, perWater],
  ["c", 70, 100, 70],
];

/** The same solution with the moles of formula units and of particles side by side, and their sum. */
const sideBySide = (
  sum: ShortCell,
  [solute, grams, particles]: readonly [string, string, number] = [
    "sodium chloride",
    "E3*D3",
    0.1711,
  ],
  sumOfMoles: ShortCell = null,
): Rows => [
  ["Solute", "Grams", "Molar mass (g/mol)", "i", "n in mol", "n·i in mol"],
  ["sucrose", 50, 342.3, 1, formula("B2/C2", 0.1461), formula("E2*D2", 0.1461)],
  [solute, 5, 58.44, 2, formula("B3/C3", 0.0856), formula(grams, particles)],
  ["Total", null, null, null, sumOfMoles, sum],
  [],
  ["Water (g)", 500],
  ["Kf of water (K·kg/mol)", 1.86],
  ["Freezing-point depression (K)", formula("B7*F4/(B6/1000)", 1.18)],
];

/** Three solutes of which a filter hides the salt: 1.86 · (0.1461 + 0.0555) / 0.5 = 0.75 K is of those shown. */
const filtered = (sum: string): Rows => [
  ["Solute", "Grams", "Molar mass (g/mol)", "i", "Moles of particles (mol)"],
  ["sucrose", 50, 342.3, 1, 0.1461],
  ["sodium chloride", 5, 58.44, 2, 0.1711],
  ["fructose", 10, 180.16, 1, 0.0555],
  ["Total", null, null, null, formula(sum, 0.2016)],
  [],
  ["Water (g)", 500],
  ["Freezing-point depression (K)", formula("1.86*E5/(B7/1000)", 0.75)],
];
const HIDDEN_SALT = {
  hiddenRows: new Set([2]),
  filtered: [{ top: 0, left: 0, bottom: 3, right: 4 }],
};

/** True and false examples on sheets of a class. */
export const classCases: readonly RuleCase[] = [
  {
    rule: "freezing-point-sign",
    what: "a temperature in °C that is the depression in kelvin above it",
    rows: {
      English: shown("The dial should then show (°C)"),
      German: shown("Sollanzeige (°C)", "B10", "Absenkung gerechnet (K)"),
    },
    cells: ["B11", "B11"],
  },
  {
    rule: "freezing-point-sign",
    what: "a temperature below zero, and a lowering that is told again",
    rows: {
      Negated: shown("The dial should then show (°C)", "-B10"),
      Again: shown("Unterschied zu Wasser (°C)"),
      Kelvin: shown("for the board (K)"),
      Same: shown("on the dial (°C)", "B10", "Lowered by (°C)"),
    },
    cells: [],
  },
  {
    rule: "result-differs",
    what: "a depression by the ideal law with its sign turned, which is told as that",
    rows: shown("The dial should then show (°C)"),
    cells: [],
  },
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
    rule: "particles-not-counted",
    what: "a column of i·n beside the moles that holds them once more",
    rows: sideBySide(formula("SUM(F2:F3)", 0.2317), ["sodium chloride", "E3", 0.0856]),
    cells: ["F3"],
  },
  {
    rule: "particles-not-counted",
    what: "a column of i·n beside the moles",
    rows: sideBySide(formula("SUM(F2:F3)", 0.3172)),
    cells: [],
  },
  {
    rule: "inclusion-as-solute",
    what: "nuts in both columns of moles",
    rows: sideBySide(formula("SUM(F2:F3)", 0.3172), ["hazelnuts", "E3*D3", 0.1711]),
    cells: ["F3"],
  },
  {
    rule: "total-incomplete",
    what: "a typed sum of moles of particles, and a formula that leaves one out",
    rows: { Typed: sideBySide(0.25), Formula: sideBySide(formula("SUM(F2:F2)", 0.1461)) },
    cells: ["F4", "F4"],
  },
  {
    rule: "total-incomplete",
    what: "a typed sum in two figures, and one of i·n below the moles",
    rows: { Rounded: sideBySide(0.32), Below: sideBySide(0.3172, undefined, 0.3172) },
    cells: [],
  },
  {
    rule: "result-differs",
    what: "a depression of the solutes that a filter shows",
    rows: filtered("SUBTOTAL(109,E2:E4)"),
    extras: HIDDEN_SALT,
    cells: [],
  },
  {
    rule: "result-differs",
    what: "one that leaves a solute out without that",
    rows: filtered("E2+E4"),
    extras: HIDDEN_SALT,
    cells: ["B8"],
  },
  {
    rule: "per-water-or-per-mix",
    what: "one syrup by the mass of the mix",
    rows: syrups(37.5),
    cells: ["D3"],
  },
  { rule: "per-water-or-per-mix", what: "syrups by their water", rows: syrups(60), cells: [] },
];
