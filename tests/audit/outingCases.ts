import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 5.844 g of salt (0.1 mol) in 500 g of water: 2 × 1.86 × 0.2 = 0.744 K. */
const keyed = (heading: string, pointC: number): Rows => [
  ["Kf (K kg/mol)", 1.86],
  [],
  ["Unknown was", "Solute (g)", "Water (g)", "Molality (mol/kg)", "i", heading, "Tf (°C)"],
  ["sodium chloride", 5.844, 500, 0.2, 2, formula("E4*$B$1*D4", 0.744), pointC],
  ["sodium chloride", 5.844, 500, 0.2, 2, formula("E5*$B$1*D5", 0.744), formula("-F5", -0.744)],
];

/** A flavour to a row and how often each is made; 2 × 600 + 3 × 500 = 2700 g of water to bring. */
const flavours = (sum: number, ...more: Rows): Rows => [
  ["Flavour", "Pans", "Water", "Sucrose", "Lactose-free milk", "One pan (g)"],
  ["Plain", 2, 600, 150, null, formula("SUM(C2:E2)", 750)],
  ["Sweet", 3, 500, 200, null, formula("SUM(C3:E3)", sum)],
  ["Thin", 1, 900, 100, null, formula("SUM(C4:E4)", 1000)],
  ...more,
];

const shopping: Rows = [
  [],
  ["Bring in all (g)", null, formula("SUMPRODUCT($B$2:$B$4,C2:C4)", 3600), 1000, null],
  ["Village shop (£ a kilo)", null, 0, 1.06, null],
];

/** What came in sacks at what price: 25 kg of sugar for 61.5. */
const goods = (perKg: boolean): Rows => [
  ["Goods", "Sack or case (kg)", "Invoice (£)", perKg ? "£ per kg" : "£ in all"],
  ["sugar", 25, 61.5, formula(perKg ? "C2/B2" : "C2*1.2", perKg ? 2.46 : 73.8)],
  ["lemon juice", 2.5, 11.5, formula(perKg ? "C3/B3" : "C3*1.2", perKg ? 4.6 : 13.8)],
];

const told = (words: string): Rows => [
  ["Ingredient", "g"],
  ["Whole milk", 600],
  ["Hazelnuts", 80],
  ["Sucrose", 100],
  [],
  [words],
];

const caution = { rule: "caution-not-named" } as const;
const sign = { rule: "freezing-point-sign" } as const;

/** Sheets of outings, markets and classes that are understood by what their formulas leave out, divide and negate. */
export const outingCases: readonly RuleCase[] = [
  ...["Key: ΔTf (K)", "Our ΔTf (K)", "By the law: freezing (K)"].map((heading): RuleCase => ({
    ...{ ...sign, cells: [], what: `what a freezing point negates, headed "${heading}"` },
    rows: keyed(heading, -0.744),
  })),
  {
    ...{ ...sign, cells: ["G4"], what: "a point above 0 beside a lowering said in other words" },
    rows: keyed("Key: ΔTf (K)", 0.744),
  },
  {
    ...{ rule: "unknown-ingredient", cells: [], what: "how often each flavour is made" },
    rows: flavours(700),
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "sums that leave out how often it is made" },
    rows: flavours(700),
  },
  {
    ...{ rule: "total-incomplete", cells: ["F3"], what: "a sum that leaves out the sugar" },
    rows: flavours(500),
  },
  {
    ...{ rule: "more-than-dissolves", cells: [], what: "what is to be brought, and its prices" },
    rows: flavours(700, ...shopping),
  },
  {
    ...{ rule: "more-than-dissolves", cells: [], what: "packs that invoices are divided by" },
    rows: goods(true),
  },
  {
    ...{ rule: "more-than-dissolves", cells: ["B2"], what: "amounts whose price is not divided" },
    rows: goods(false),
  },
  ...[
    "Made with milk, tree nuts (hazelnuts). Whole nuts, choking danger",
    "Has in it milk and tree nuts (hazelnuts)",
    "Camp nurse: milk, tree nuts (hazelnuts)",
    "Please note: milk, nuts",
  ].map((words): RuleCase => ({
    ...{ ...caution, cells: [], what: `"${words}"` },
    rows: told(words),
  })),
  ...["Serve with milk", "Shopping: milk, nuts", "Milk has to be cold"].map((words): RuleCase => ({
    ...{ ...caution, cells: ["A1:B4"], what: `"${words}", which tells nobody` },
    rows: told(words),
  })),
  {
    ...{ rule: "total-incomplete", cells: ["A4"], what: "a typed total of the mix in all" },
    rows: [
      ["Mass (g)", "Component"],
      [600, "water"],
      [200, "sucrose"],
      [700, "mix in all"],
    ],
  },
  // 200 g of milk bring about 175 g of water to the 600 poured in.
  {
    ...{ rule: "water-not-counted", cells: ["B6"], what: "the water phase of a mix" },
    rows: [
      ["Component", "g"],
      ["Water", 600],
      ["Whole milk", 200],
      ["Sucrose", 150],
      [],
      ["Water phase (g)", 600],
    ],
  },
  {
    ...{ rule: "misses-its-target", cells: ["B5"], what: "the product that a thin mix is to be" },
    rows: [["Component", "g"], ["Water", 900], ["Sucrose", 60], [], ["Product", "scooped at −13"]],
  },
];
