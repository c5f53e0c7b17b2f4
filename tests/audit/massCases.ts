import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** The card, times as much as what the benches weighed in but for its sugar. */
const batches = (sugar: number, times: number): Rows => [
  ["Ingredient", "Card (g)", "Bench 1 (g)", "Bench 2 (g)", "Bench 3 (g)"],
  ["Water", times * 480, 500, 470, 490],
  ["Sucrose", sugar, 170, 165, 180],
  ["Lemon juice", times * 120, 120, 118, 125],
  ["Dextrose monohydrate", times * 60, 62, 60, 59],
];

/** Amounts that only another unit explains, and small or large ones that are meant. */
export const massCases: readonly RuleCase[] = [
  ...(
    [
      [0.0088, ["B2"]],
      [0.008, []],
      [0.0215, []],
      [8.8, []],
    ] as const
  ).map(([fruit, cells]) => ({
    rule: "mass-units-mixed",
    what: `tenths of a gram of fruit among kilograms: ${String(fruit)} kg`,
    rows: [
      ["Ingredient", "Amount (kg)"],
      ["Mango", fruit],
      ["Sugar", 1.827],
      ["Glucose syrup DE 42", 0.728],
      ["Lemon juice", 0.406],
    ],
    cells,
  })),
  {
    rule: "mass-units-mixed",
    what: "three decimals among whole grams, for what there is most of",
    rows: [
      ["Ingredient", "Amount (g)"],
      ["Mango", 1.321],
      ["Sucrose", 264],
      ["Glucose syrup DE 42", 99],
      ["Lemon juice", 62],
    ],
    cells: ["B2"],
  },
  {
    rule: "mass-units-mixed",
    what: "a vat of water, once, where another recipe is worked out from it",
    rows: [
      ["Ingredient", "Amount (g)", "Double (g)"],
      ["Water", 100000, formula("B2*2", 200000)],
      ["Strawberries", 505, formula("B3*2", 1010)],
      ["Sucrose", 146, formula("B4*2", 292)],
    ],
    cells: ["B2"],
  },
  {
    rule: "mass-units-mixed",
    what: "a vat of water, once, where shares and from these a batch are worked out from it",
    rows: [
      ["Ingredient", "Share (%)", "Weighed (g)", "Batch (g)"],
      ...[
        ["Water", 100000] as const,
        ["Strawberries", 505] as const,
        ["Sucrose", 146] as const,
      ].map(([name, grams], at) => [
        name,
        formula(`C${at + 2}/C$5*100`, grams / 1006.51),
        grams,
        formula(`B${at + 2}*2000/100`, grams / 50.3255),
      ]),
      ["Total", formula("SUM(B2:B4)", 100), formula("SUM(C2:C4)", 100651), 2000],
    ],
    cells: ["C2"],
  },
  {
    rule: "mass-units-mixed",
    what: "a few grams of honey, and much water with a little of all else",
    rows: {
      Honeyed: [
        ["Ingredient", "Amount (g)"],
        ["Water", 500],
        ["Sucrose", 150],
        ["Honey", 2.5],
      ],
      Thin: [
        ["Ingredient", "Amount (kg)"],
        ["Water", 15],
        ["Sucrose", 0.2],
        ["Lemon juice", 0.1],
      ],
    },
    cells: [],
  },
  {
    rule: "mass-units-mixed",
    what: "half a batch whose sugar is short, beside whole ones",
    rows: batches(17, 0.5),
    cells: [],
  },
  {
    rule: "mass-units-mixed",
    what: "half a batch with a tenth of its sugar, beside whole ones",
    rows: batches(8.5, 0.5),
    cells: ["B3"],
  },
  {
    rule: "mass-units-mixed",
    what: "three batches with a tenth of their sugar, beside single ones",
    rows: batches(51, 3),
    cells: ["B3"],
  },
];
