import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const flags = (rule: string, what: string, rows: Rows, ...cells: readonly string[]): RuleCase => ({
  ...{ rule, what, rows, cells },
});
const leaves = (rule: string, what: string, rows: Rows): RuleCase => ({
  ...{ rule, what, rows, cells: [] },
});

/** Questions whose numbers are texts, with their answers. */
const questions = (...numbers: readonly string[]): Rows => [
  ["Kf of water 1.86 °C/m"],
  [],
  [numbers[0], "Molality of 36 g of glucose in 500 g of water?", 0.4, "mol/kg"],
  [numbers[1], "By how much does it freeze lower?", 0.744, "°C"],
  [numbers[2], "At what temperature does it freeze?", -0.744, "°C"],
];

/** Salts of one litre, and what they fall into. */
const sachet = (particles: number): Rows => [
  ["what", "g", "M g/mol", "particles", "mmol of particles"],
  ["sodium chloride", 2.6, 58.44, particles, formula("B2/C2*D2*1000", 44.49 * particles)],
  ["glucose, anhydrous", 13.5, 180.16, 1, formula("B3/C3*D3*1000", 74.93)],
];

/** The same grams of two sugars, by i·Kf·m. */
const sugars = (molarMass: number, fall = (1.86 * 40) / molarMass / 0.25): Rows => [
  [null, "table sugar", "fruit sugar"],
  ["sugar (g)", 40, 40],
  ["water (g)", 250, 250],
  ["molar mass (g/mol)", 342.3, molarMass],
  [
    "molality (mol/kg)",
    formula("B2/B4/B3*1000", 0.4674),
    formula("C2/C4/C3*1000", 40 / molarMass / 0.25),
  ],
  ["Kf × molality (K), Kf = 1.86 K kg/mol", formula("1.86*B5", 0.8694), fall],
];

/** Readings of a class with their means and differences. */
const readings = (mean: string, difference: string): Rows => [
  ["Reading", 1, 2, 3, 4, "Mean"],
  ["Water (°C)", 0.02, 0.01, 0.02, 0.02, formula("AVERAGE(B2:E2)", 0.0175)],
  ["Solution (°C)", -0.44, -0.45, -0.44, -0.46, formula(mean, -0.4475)],
  ["Second solution (°C)", -0.9, -0.9, -0.9, -0.9, formula("AVERAGE(B4:E4)", -0.9)],
  [
    "Difference (K)",
    ...["B", "C", "D", "E"].map((at) => formula(`${at}2-${at}3`, 0.46)),
    formula(difference, 0.465),
  ],
];

const series = (said: string, by: string): Rows => [
  [said],
  [],
  ["", "A", "B", "C"],
  ["g of stock", 100, 80, 60],
  ["g sucrose in it", ...["B", "C", "D"].map((at) => formula(`${at}4*${by}`, 14.6))],
];

const brine = (solid: string, solidGrams: number): Rows => [
  ["Ethanol g", "Water g", solid],
  [5, 95, solidGrams],
  [25, 75, solidGrams],
];

/** A class's mixtures with what they were marked. */
const marked = (heading: string): Rows => [
  ["Group", "Fructose [g]", "Water [g]", "measured [°C]", heading],
  ["Mia", 4.6, 100, -0.5, 5],
  ["Tom", 9.2, 100, -1, 4],
  ["Lea", 9.2, 100, -1, 5],
];

/** Ethylene glycol: 10 g in 90 g of water freeze at −3.4 °C. */
const coolant = (title: string, ...points: readonly number[]): Rows => [
  [title],
  [],
  ["glycol g", "water g", "starts to freeze °C"],
  ...points.map((point, at) => [10 * (at + 1), 90 - 10 * at, point]),
];

const baths = (ice: readonly number[], last: string): Rows => [
  ["Bath", "crushed ice, g", "salt, g", "which salt", "gets to °C"],
  ["A", ice[0] ?? 0, 100, "table salt", -6],
  ["B", ice[1] ?? 0, 200, "table salt", -12],
  ["C", ice[2] ?? 0, 330, "table salt", -20],
  ["D", ice[3] ?? 0, 250, last, -15],
];

/** Salt water of three groups, with what lies between them. */
const groups = (spread: string): Rows => [
  ["Group", "A", "B", "C", "Spread"],
  ["salt (g)", 5, 5.1, 4.9, formula(spread, 0.2)],
  ["water (g)", 100, 101, 99, formula(spread.replaceAll("2", "3"), 2)],
  [
    "molality (mol/kg)",
    ...[0.8556, 0.864, 0.847].map((value, at) => {
      const column = "BCD"[at] ?? "";
      return formula(`${column}2/58.44/${column}3*1000`, value);
    }),
    formula(spread.replaceAll("2", "4"), 0.017),
  ],
];

/** A bath, with what stands below its salt. */
const bath = (below: string, amount: string): Rows => [
  ["Bath for the lolly machine"],
  ["Water, kg", 12],
  ["Salt, kg", 3],
  [below, formula(amount, 4)],
];

const sea = (first: string, salt: string): Rows => [
  [first, salt, "Water g"],
  [10, 10, 990],
  [35, 35, 965],
];

/** Worksheets, baths and solutions as teachers and students type them. */
export const worksheetCases: readonly RuleCase[] = [
  leaves("number-as-text", "questions that are numbered in texts", questions("1", "2", "3")),
  flags(
    "number-as-text",
    "texts that do not count on",
    [["Freezer (°C)"], ["-18"], ["-19"], ["-18"]].map((row) => [...row, 1]),
    "A2",
    "A3",
    "A4",
  ),
  leaves("constant-of-a-solute", "so many mmol of particles", sachet(2)),
  flags("constant-of-a-solute", "a factor beside mmol of particles", sachet(3), "D2"),
  leaves("constant-of-a-solute", "sugars named above their columns", sugars(180.16)),
  flags("constant-of-a-solute", "a molar mass below the sugar's name", sugars(342.3), "C4"),
  leaves("cryoscopic-constant", "the law written out", sugars(180.16)),
  leaves("result-differs", "sugars named above their columns, by the law", sugars(180.16)),
  flags("result-differs", "what the law written out does not give", sugars(180.16, 2.9), "C6"),
  leaves(
    "inconsistent-formula",
    "a difference of means, in a row of differences",
    readings("AVERAGE(B3:E3)", "F2-F3"),
  ),
  flags(
    "inconsistent-formula",
    "another difference below means",
    readings("AVERAGE(B3:E3)", "E2-F3"),
    "F5",
  ),
  leaves(
    "hard-coded-number",
    "what a sentence above says a stock has",
    series("Stock: 171.15 g sucrose dissolved in 1000 g water = 0.5 mol/kg", "171.15/1171.15"),
  ),
  flags(
    "hard-coded-number",
    "what a sentence above does not say",
    series("Stock: 171.15 g sucrose dissolved in 1000 g water = 0.5 mol/kg", "0.146"),
    "B5:D5",
  ),
  leaves("too-much-alcohol-to-set", "ethanol in nothing but water", brine("°C", -2)),
  flags("too-much-alcohol-to-set", "ethanol with sugar", brine("Sucrose g", 15), "A3"),
  leaves("result-differs", "a share of ethanol that names nothing", [
    ["Ethanol g", "Water g", "w %"],
    [5, 95, 5],
    [25, 75, 25],
  ]),
  leaves("result-differs", "how far groups lie apart", groups("MAX(B2:D2)-MIN(B2:D2)")),
  flags("result-differs", "the sum of groups", groups("SUM(B2:D2)"), "E4"),
  leaves("unknown-ingredient", "how many times more water there is", bath("Ratio", "B2/B3")),
  flags("unknown-ingredient", "an amount worked out of another", bath("Gloop, kg", "B3*4/3"), "A4"),
  leaves("unknown-ingredient", "how salty each water is", sea("Salinity (g/kg)", "Salt g")),
  flags("unknown-ingredient", "a word beside salt and water", sea("Gloop g", "Salt g"), "A1"),
  flags(
    "unknown-ingredient",
    "one of several shares",
    [
      ["Gloop (g/kg)", "Salt (g/kg)", "Water (g/kg)"],
      [100, 35, 865],
      [200, 35, 765],
    ],
    "A1",
  ),
  leaves("unknown-ingredient", "marks behind what was measured", marked("Marks")),
  flags(
    "unknown-ingredient",
    "an unknown word before what was measured",
    marked("x").map(([group, fructose, water, point, gloop]) => [
      ...[group, fructose, gloop === "x" ? "Gloop [g]" : gloop, water, point],
    ]),
    "C1",
  ),
  leaves(
    "ambiguous-ingredient",
    "a glycol that the title names",
    coolant("Why antifreeze works: ethylene glycol and water", -3, -8, -15),
  ),
  flags(
    "ambiguous-ingredient",
    "a glycol of two that the title names",
    coolant("Ethylene glycol or propylene glycol in water?", -3, -8, -15),
    "A3",
  ),
  leaves(
    "result-differs",
    "points to the degree",
    coolant("Ethylene glycol and water", -3, -8, -15),
  ),
  flags(
    "result-differs",
    "a point further off than a degree's half",
    coolant("Ethylene glycol and water", -2, -8, -15),
    "C4",
  ),
  leaves(
    "ingredient-twice",
    "a salt to each bath of ice",
    baths([1000, 1000, 1000, 1000], "ammonium chloride"),
  ),
  leaves(
    "temperature-units-mixed",
    "baths of other salts",
    baths([1000, 1000, 1000, 1000], "ammonium chloride"),
  ),
];
