import type { Rows } from "./bookOf";
import { formula } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const mix = (water: number, sucrose: number, ...more: Rows): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", water],
  ["Sucrose", sucrose],
  ["Lemon juice", 120],
  ["Guar gum", 2],
  ...more,
];
const versions = (second: number, third: readonly number[] = [450, 150, 110]): Rows => [
  ["Ingredient", "A g", "B g", "C g", "D g"],
  ["Water", 480, 500, third[0], 470],
  ["Sucrose", 170, second, third[1], 180],
  ["Lemon juice", 120, 120, third[2], 100],
];

/** A freezer's log of a morning, in °C but for what is put in. */
const log = (odd: number, ...more: Rows): Rows => [
  ["Time", "Air (°C)"],
  ...[-22, -21, -23, odd, -22, -24, -21, -22].map((value, at) => [`${at + 7}:00`, value]),
  ...more,
];
const percentRows = (title: string): Rows => [
  [title],
  [null],
  ["Sorte", "Wasser", "Zucker", "Zitronensaft"],
  ["herb", 70, 20, 10],
  ["mild", 65, 25, 10],
];

/** True and false examples of units that are mixed up or left out. */
export const unitCases: readonly RuleCase[] = [
  {
    rule: "temperature-units-mixed",
    what: "one reading of a log typed in °F",
    rows: log(-8),
    cells: ["B5"],
  },
  {
    rule: "temperature-units-mixed",
    what: "a log, and the serving temperature of a recipe below it",
    rows: log(-22, [null], [null], ["Served at (°C)", -10], ["Ingredient", "g"], ["water", 500]),
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "a title that says the unit of the whole table",
    rows: percentRows("Rezepte in % der Masse"),
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "a title that ends like one with a unit and has none",
    rows: percentRows("Verkauft in Gera"),
    cells: ["B3"],
  },
  {
    rule: "mass-units-mixed",
    what: "kilograms typed into grams",
    rows: mix(0.48, 170, ["Total", formula("SUM(B2:B5)", 292.48)]),
    cells: ["B2"],
  },
  {
    rule: "mass-units-mixed",
    what: "grams typed into kilograms",
    rows: [
      ["Ingredient", "kg"],
      ["Water", 48],
      ["Sucrose", 17000],
      ["Lemon juice", 12],
    ],
    cells: ["B3"],
  },
  {
    rule: "mass-units-mixed",
    what: "a point in the wrong place, by the total that is written",
    rows: mix(480, 1700, ["Total", 772]),
    cells: ["B3"],
  },
  {
    rule: "total-incomplete",
    what: "a written total that one amount in another unit explains",
    rows: mix(480, 1700, ["Total", 772]),
    cells: [],
  },
  {
    rule: "mass-units-mixed",
    what: "a tenth of what the versions beside it have",
    rows: versions(16),
    cells: ["C3"],
  },
  {
    rule: "mass-units-mixed",
    what: "versions that differ as versions do",
    rows: versions(120),
    cells: [],
  },
  {
    rule: "mass-units-mixed",
    what: "recipes of different kinds: one is sharp with lemon",
    rows: [
      ["Ingredient", "A g", "B g", "C g", "D g"],
      ["Water", 480, 500, 450, 470],
      ["Sucrose", 170, 160, 150, 180],
      ["Raspberry", null, 300, 310, 290],
      ["Lemon juice", 200, 20, 20, 20],
    ],
    cells: [],
  },
  {
    rule: "mass-units-mixed",
    what: "pinches of salt, acid and gum, a thin syrup",
    rows: [
      ...mix(480, 170, ["Sodium chloride", 0.5], ["Citric acid", 0.4], ["Locust bean gum", 0.8]),
    ],
    cells: [],
  },
  {
    rule: "mass-units-mixed",
    what: "a format that shows kilograms in a column of grams",
    rows: [
      ["Ingredient", "Amount (g)"],
      ["Water", { value: 0.48, format: '0.00 "kg"' }],
      ["Sucrose", 170],
      ["Lemon juice", 120],
    ],
    cells: ["B2"],
  },
  {
    rule: "mass-units-mixed",
    what: "grams worked out from an amount and its unit",
    rows: [
      ["Ingredient", "Amount", "Unit", "g"],
      ["Water", 0.5, "kg", formula("B2*1000", 500)],
      ["Sucrose", 1, "cup", 200],
      ["Lemon juice", 60, "g", 60],
    ],
    cells: [],
  },
  {
    rule: "percent-and-fraction",
    what: "23 among fractions",
    rows: [
      ["Zutat", "Anteil"],
      ["Wasser", 0.62],
      ["Zucker", 23],
      ["Zitronensaft", 0.15],
    ],
    cells: ["B3"],
  },
  {
    rule: "percent-and-fraction",
    what: "a share beside the grams",
    rows: [
      ["Ingredient", "g", "Share %"],
      ["Water", 620, 62],
      ["Sucrose", 230, 0.23],
      ["Lemon juice", 150, 15],
    ],
    cells: ["C3"],
  },
  {
    rule: "total-incomplete",
    what: "shares of which one is a fraction, of which another rule tells",
    rows: [
      ["Recipe", "Water %", "Sucrose %", "Lemon juice %"],
      ["A", 62, 23, 0.15],
      ["B", 60, 25, 15],
    ],
    cells: [],
  },
  {
    rule: "percent-and-fraction",
    what: "one share of a row",
    rows: [
      ["Recipe", "Water %", "Sucrose %", "Lemon juice %"],
      ["A", 62, 23, 0.15],
      ["B", 60, 25, 15],
    ],
    cells: ["D2"],
  },
];
