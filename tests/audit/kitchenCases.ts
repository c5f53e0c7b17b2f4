import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** A mix with its target, and the bottles of the house below it. */
const withBottles = (sugarGrams: number): Rows => [
  ["Ingredient", "g"],
  ["Water", 600],
  ["Sucrose", sugarGrams],
  ["Lemon juice", 20],
  [],
  ["Comes out", "scooped at −13"],
  [],
  ["Bottle", "g", "% vol"],
  ["Rum 40 %", 60, 40],
  ["Vodka 40 %", 40, 40],
];

/** 180 g of sucrose in 600 g of water for one table, bought for three. */
const forTables = (dissolvedGrams: number): Rows => [
  ["Tables", 3],
  ["Ingredient", "per table (g)", "For all (g)"],
  ["Water", 600, formula("B3*$B$1", 1800)],
  ["Sucrose", 180, formula("B4*$B$1", 540)],
  ["Total", formula("SUM(B3:B4)", 780), formula("SUM(C3:C4)", 2340)],
  [],
  ["Dissolved in it (g)", dissolvedGrams],
];

/** A trial in g, scaled to kg, each amount beside its unit; the formulas show what they do when the first is an error. */
const scaled = (first: number | { readonly error: string }): Rows => {
  const isError = typeof first === "object";
  const of = (text: string, value: number) => ({
    ...{ formula: text, value: isError ? first : value, format: "0.000" },
  });
  return [
    ["Times", isError ? formula("12000/B6", first) : formula("12000/B6", 15)],
    [],
    ["What", "Trial", null, "For the tubs", null],
    ["Water", first, "g", of("B4*$B$1/1000", 9), "kg"],
    ["Sucrose", 200, "g", of("B5*$B$1/1000", 3), "kg"],
    ["In all", isError ? formula("SUM(B4:B5)", first) : 800, "g", of("SUM(D4:D5)", 12), "kg"],
  ];
};

/** Two examples beside each other: 58.44 g of salt and 90.08 g of glucose, each in 1000 g of water. */
const twoExamples = (secondConstant: number): Rows => [
  ["We dissolve", "Sodium chloride", "Glucose"],
  ["Mass (g)", 58.44, 90.08],
  ["in water (g)", 1000, 1000],
  ["Molar mass (g/mol)", 58.44, 180.16],
  ["Particles (i)", 2, 1],
  ["Kf of water (K·kg/mol)", 1.86, secondConstant],
];

/** Sheets of kitchens and shops: which list and which column what is said beside it belongs to. */
export const kitchenCases: readonly RuleCase[] = [
  {
    ...{ rule: "misses-its-target", cells: ["B6"], what: "a target between a mix and bottles" },
    rows: withBottles(60),
  },
  {
    ...{
      rule: "misses-its-target",
      cells: [],
      what: "a target that the mix meets, not the bottles",
    },
    rows: withBottles(300),
  },
  {
    ...{
      rule: "result-differs",
      cells: ["B7"],
      what: "what is dissolved in all, said of one table",
    },
    rows: forTables(250),
  },
  {
    ...{ rule: "result-differs", cells: [], what: "what is dissolved for one table" },
    rows: forTables(180),
  },
  {
    ...{ rule: "more-digits-than-known", cells: [], what: "kilograms beside a trial in grams" },
    rows: scaled(600),
  },
  {
    ...{
      rule: "error-in-an-amount",
      cells: ["B4"],
      what: "the first of amounts beside their units",
    },
    rows: scaled({ error: "#REF!" }),
  },
  {
    ...{ rule: "cryoscopic-constant", cells: ["C6"], what: "the constant of the second example" },
    rows: twoExamples(18.6),
  },
  {
    ...{ rule: "cryoscopic-constant", cells: [], what: "two examples with the constant of water" },
    rows: twoExamples(1.86),
  },
  {
    ...{ rule: "hidden-amount", cells: ["B3"], what: "a row of a list, with an example beside it" },
    rows: [
      ["Ingredient", "g", null, "We dissolve", "Glucose"],
      ["Water", 500, null, "Mass (g)", 18],
      ["Sucrose", 100, null, "in water (g)", 500],
      ["Lemon juice", 50, null, "Molar mass (g/mol)", 180.16],
    ],
    extras: { hiddenRows: new Set([2]) },
  },
  {
    ...{
      rule: "number-as-text",
      cells: ["B3"],
      what: "an amount, not the link to it in another list",
    },
    rows: [
      ["Ingredient", "g"],
      ["Water", 500],
      ["Rum 40 %", "60"],
      ["Sucrose", 100],
      [],
      ["Bottle", "g", "% vol"],
      ["Rum 40 %", formula("B3", "60"), 40],
      ["Vodka 40 %", 20, 40],
    ],
  },
];
