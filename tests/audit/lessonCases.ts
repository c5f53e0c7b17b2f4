import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 50 g of sucrose and 5 g of salt in 500 g of water, by i·Kf·n/kg; without its factor the salt has 0.0856 mol. */
const jug = (heading: string, salt: string): Rows => {
  const moles = salt.includes("A3") ? 0.1711 : 0.0856;
  const molality = (0.1461 + moles) / 0.5;
  return [
    ["i", "Substance", "M in g/mol", "m in g", heading],
    [1, "sucrose", 342.3, 50, formula("D2/C2*A2", 0.1461)],
    [2, "sodium chloride", 58.44, 5, formula(salt, moles)],
    [null, "together", null, null, formula("SUM(E2:E3)", 0.1461 + moles)],
    [],
    [null, "Water in the jug (g)", 500],
    [null, "Particles (mol per kg of water)", formula("E4/(C6/1000)", molality)],
    [null, "ΔT by the ideal law (K)", formula("1.86*C7", 1.86 * molality)],
  ];
};

/** 5 g of salt in 500 g of water, 0.1711 mol/kg; the pieces of each unit have no word of chemistry. */
const bowl = (pieces: number): Rows => [
  ["Step", "Unit", "Bowl A"],
  ["Stirred in", null, "sodium chloride"],
  ["How much of it", "g", 5],
  ["One mole weighs", "g/mol", 58.44],
  ["Water in the bowl", "g", 500],
  ["Moles to a kilogram of water", "mol/kg", formula("C3/C4/(C5/1000)", 0.1711)],
  ["Pieces from each unit", null, pieces],
  ["Moles of pieces to a kilogram", "mol/kg", formula("C6*C7", 0.1711 * pieces)],
  ["So it freezes lower by", "K", formula("1.86*C8", 1.86 * 0.1711 * pieces)],
];

/** Water 500 g, sucrose 150 g and nuts: 150 g dissolve. */
const bar = (label: string, grams: number, nutsGrams = 100): Rows => [
  ["Ingredient", "Mass in g"],
  ["water", 500],
  ["sucrose", 150],
  ["hazelnuts", nutsGrams],
  [],
  [label, grams],
];

const jars = (share: number, heading = "% sugar in the jar"): Rows => [
  ["Water (g)", "Sugar (g)", "Jar", heading, "g sugar on 100 g water"],
  [400, 100, "for washing fruit", share, 25],
  [200, 200, "for candied peel", 50, 100],
];

/** Water 500 g and sucrose 150 g: 30 g of sugar to 100 g of water. */
const room = (perWater: number, ...below: Rows): Rows => [
  ["one group (g)", "food", "all groups (g)", null, "sugar to 100 g of water (g)", perWater],
  [500, "water", formula("4*A2", 2000)],
  [150, "sucrose", formula("4*A3", 600)],
  [formula("SUM(A2:A3)", 650), "whole mass", formula("SUM(C2:C3)", 2600)],
  [],
  ...below,
];

/** True and false examples on sheets of schools; all figures by arithmetic. */
export const lessonCases: readonly RuleCase[] = [
  ...["i·m/M in mol", "in solution, mol"].flatMap((heading) => [
    {
      ...{ rule: "particles-not-counted", cells: ["E3"] },
      ...{ what: `one salt left single below "${heading}"`, rows: jug(heading, "D3/C3") },
    },
    {
      ...{ rule: "particles-not-counted", cells: [] },
      ...{ what: `all factors below "${heading}"`, rows: jug(heading, "D3/C3*A3") },
    },
  ]),
  {
    ...{ rule: "constant-of-a-solute", cells: ["C7"] },
    ...{ what: "a factor of a molality that its formula tells", rows: bowl(3) },
  },
  {
    ...{ rule: "constant-of-a-solute", cells: [] },
    ...{ what: "the right factor of a molality", rows: bowl(2) },
  },
  ...["Solids that dissolve (g)", "dissolving solids in the mix (g)"].flatMap((label) => [
    {
      ...{ rule: "inclusion-as-solute", cells: ["B6"] },
      ...{ what: `nuts in "${label}"`, rows: bar(label, 250) },
    },
    {
      ...{ rule: "inclusion-as-solute", cells: [] },
      ...{ what: `no nuts in "${label}"`, rows: bar(label, 150) },
    },
  ]),
  {
    // 210 g of 710 g are 29.6 %, of which 21.1 % dissolve.
    ...{ rule: "inclusion-as-solute", cells: ["B6"], what: "nuts in a rounded share" },
    rows: bar("dissolved in 100 g of the mix (g)", 30, 60),
  },
  {
    ...{ rule: "inclusion-as-solute", cells: [], what: "nuts in what doesn't dissolve" },
    rows: bar("what doesn't dissolve (g)", 100),
  },
  {
    ...{ rule: "per-water-or-per-mix", cells: ["D2"] },
    ...{ what: "a share in the jar that is to its water", rows: jars(25) },
  },
  {
    ...{ rule: "per-water-or-per-mix", cells: [], what: "a share in the jar" },
    rows: jars(20),
  },
  {
    ...{ rule: "result-differs", cells: [], what: "what is left in the jar" },
    rows: jars(40, "sugar left in the jar (g)"),
  },
  {
    ...{ rule: "result-differs", cells: ["F1"] },
    ...{ what: "beside a list with its allergens below", rows: room(35, ["Allergens", "milk"]) },
  },
  {
    ...{ rule: "result-differs", cells: [], what: "a right one beside such a list" },
    rows: room(30, ["Allergens", "milk"], ["may hold", "hazelnuts"]),
  },
];
