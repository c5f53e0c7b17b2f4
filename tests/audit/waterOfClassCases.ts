import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 0.1 mol each of salt and sucrose in 500 g of water: 0.3 mol of particles, 0.6 mol/kg. */
const handout = (water: string, molality: number): Rows => [
  [water, 500],
  ["Kf, water (K kg/mol)", 1.86],
  [],
  ["Compound", "Weighed in (g)", "M (g/mol)", "n (mol)", "i", "i × n (mol)"],
  ["sucrose", 34.23, 342.3, formula("B5/C5", 0.1), 1, formula("E5*D5", 0.1)],
  ["sodium chloride", 5.844, 58.44, formula("B6/C6", 0.1), 2, formula("E6*D6", 0.2)],
  [],
  ["Molality of particles (mol/kg)", formula("SUM(F5:F6)/(B1/1000)", molality)],
];

/** 40 g of salt in 400 g of water: 2 × 1.86 × 1.711 = 6.37 K by the law, and 5.9 K or so in truth. */
const promise = (words: string): Rows => [
  [words],
  ["Kf (K kg/mol)", 1.86],
  ["Unknown", "Solute (g)", "Water (g)", "Molar mass (g/mol)", "i", "ΔTf (K)"],
  ["sodium chloride", 40, 400, 58.44, 2, formula("E4*$B$2*B4/D4/(C4/1000)", 6.365)],
];

/** Tasks on one sheet, the key with its constants on another, in a table whose moles are said in words of their own. */
const tasks = (particles: number): Readonly<Record<string, Rows>> => ({
  Aufgaben: [
    ["Aufg.", "Wasser im Topf (g)", "dazu (g)", "Stoff", "Gefrierpunkt (°C)"],
    ["1)", 400, 4, "Natriumchlorid", "........"],
    ["2)", 300, 32, "Saccharose", "........"],
  ],
  Lösung: [
    ["Aufg.", "M [g/mol]", "Teilchen", "Mole gelöst", "Absenkung [K]"],
    ...[
      ["1)", 58.44, particles, formula("Aufgaben!C2/B2", 0.06845), formula("D2/0.4*C2*1.86", 0.64)],
      ["2)", 342.3, 1, formula("Aufgaben!C3/B3", 0.09349), formula("D3/0.3*C3*1.86", 0.58)],
    ],
  ],
});

const differs = { rule: "result-differs" } as const;

/** Class sheets whose water is said in other words, or by the formula that divides by it. */
export const waterOfClassCases: readonly RuleCase[] = [
  ...[
    ...["Deionised water (g)", "Lab-grade distilled water (g)", "VE-Wasser (g)"],
    ...["Entsalztes Wasser in g", "Into the flask (g)"],
  ].flatMap((water): RuleCase[] => [
    { ...{ ...differs, cells: [], what: `a molality in "${water}"` }, rows: handout(water, 0.6) },
    {
      ...{ ...differs, cells: ["B8"], what: `another molality in "${water}"` },
      rows: handout(water, 0.9),
    },
  ]),
  {
    ...{ rule: "ideal-law-too-far-off", cells: ["F4"], what: "a law that may be 0.2 K away" },
    rows: promise("Key by the ideal law; the true value may be 0.2 K away, so mark the working."),
  },
  {
    ...{ rule: "ideal-law-too-far-off", cells: [], what: "a law that may be 2 K away" },
    rows: promise("Key by the ideal law; the true value may be 2 K away, so mark the working."),
  },
  {
    ...{ rule: "input-without-unit", cells: ["B1"], what: "water that a formula takes for grams" },
    rows: handout("Deionised water", 0.6),
  },
  {
    ...{ rule: "input-without-unit", cells: [], what: "water in grams" },
    rows: handout("Deionised water (g)", 0.6),
  },
  {
    ...{ rule: "constant-of-a-solute", cells: ["C2"], what: "three particles of salt in a key" },
    rows: tasks(3),
  },
  {
    ...{ rule: "constant-of-a-solute", cells: [], what: "two particles of salt in a key" },
    rows: tasks(2),
  },
];
