import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST: Rows = [
  ["Ingredient", "Amount (g)", "Cost €"],
  ["Water", 500, 0],
  ["Sucrose", 150, 0.2],
  ["Guar gum", 2, 0.1],
];
const listed = (...more: Rows): Rows => [...LIST, ...more];
const twoStages = (total: Rows[number]): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Subtotal", formula("SUM(B2:B3)", 650)],
  ["Lemon juice", 60],
  ["Fructose", 40],
  total,
];
const shares = (last: number, ...more: Rows): Rows => [
  ["Ingredient", "Amount (g)", "Share %"],
  ["Water", 700, 70],
  ["Sucrose", 200, 20],
  ["Lemon juice", 100, last],
  ...more,
];

/** Shares whose last line has a name of its own. */
const inAll = (label: string, stated: number, last = 10): Rows => [
  ["What", "% by mass"],
  ["Water", 70],
  ["Sucrose", 20],
  ["Lemon juice", last],
  [label, stated],
];
/** The same beside the grams of a day, of which a function reads the shares. */
const beside = (stated: number): Rows => [
  ["What", "% by mass", "today (g)"],
  ["Water", 70, formula("B2/100*600", 420)],
  ["Sucrose", 20, formula("B3/100*600", 120)],
  ["Lemon juice", 10, formula("B4/100*600", 60)],
  ["100 % probe", stated],
  [],
  ["Freezing point (°C)", formula("RIME.FREEZINGPOINT(A2:A4,B2:B4)", -1.96)],
];
/** Shares and grams that are added up in the row above them. */
const above = (sum: string, total: number): Rows => [
  ["Summe", formula(sum, total), formula("SUM(C3:C6)", 450)],
  ["Zutaten", "Anteil (Summe 1)", "für die Dose (g)"],
  ["Wasser", 0.7, formula("B3*450", 315)],
  ["Zucker", 0.16, formula("B4*450", 72)],
  ["Zitronensaft", 0.09, formula("B5*450", 40.5)],
  ["Glukose", 0.05, formula("B6*450", 22.5)],
];
/** Lines of one kind, all in the plural, under a heading with or without its unit. */
const plurals = (heading: string, sum: string, total: number): Rows => [
  ...LIST,
  ...[[], ["Problem set", heading]],
  ...[
    ["Phase diagrams", 30],
    ["Colligative properties", 45],
    ["Kinetics", 25],
  ],
  ["Course work", formula(sum, total)],
];
const TOTAL = "total-incomplete";

/** True and false examples of totals and shares. */
export const totalCases: readonly RuleCase[] = [
  {
    rule: "total-incomplete",
    what: "a sum that leaves out two grams of gum",
    rows: listed(["Total", formula("SUM(B2:B3)", 650), null]),
    cells: ["B5"],
  },
  {
    rule: "total-incomplete",
    what: "a sum of costs that leaves out a row",
    rows: listed(["Total", formula("SUM(B2:B4)", 652), formula("SUM(C2:C3)", 0.2)]),
    cells: ["C5"],
  },
  {
    rule: "total-incomplete",
    what: "whole sums of amounts and costs, and a typed total of costs with the rent in it",
    rows: listed(["Total", formula("SUM(B2:B4)", 652), 4.5]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a total that counts a subtotal again",
    rows: twoStages(["Total", formula("SUM(B2:B6)", 1400)]),
    cells: ["B7"],
  },
  {
    rule: "total-incomplete",
    what: "a total of a subtotal and what follows",
    rows: twoStages(["Total", formula("B4+SUM(B5:B6)", 750)]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a total of the second stage",
    rows: twoStages(["Subtotal", formula("SUM(B5:B6)", 100)]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a typed total that counts an amount typed as text",
    rows: listed(["Lemon juice", "12,5", 0], ["Total", 664.5, null]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "shares beside grams that come to 97 %",
    rows: shares(7),
    cells: ["C2:C4"],
  },
  {
    rule: "total-incomplete",
    what: "shares whose total says 97",
    rows: [
      ["Ingredient", "Share %"],
      ["Water", 70],
      ["Sucrose", 20],
      ["Lemon juice", 7],
      ["Total", formula("SUM(B2:B4)", 97)],
    ],
    cells: ["B2:B4"],
  },
  {
    rule: "total-incomplete",
    what: "shares beside grams that come to 100 %",
    rows: shares(10, ["Total", 1000, 100]),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "the moles of the solutes, without the water's",
    rows: [
      ["Ingredient", "g", "Moles"],
      ["Water", 500, 27.75],
      ["Sucrose", 34.23, 0.1],
      ["Glucose", 18.02, 0.1],
      ["Total", formula("SUM(B2:B4)", 552.25), formula("SUM(C3:C4)", 0.2)],
    ],
    cells: [],
  },
  {
    rule: "abv-as-mass",
    what: "40 % of the grams by a formula",
    rows: [
      ["Ingredient", "g", "ABV %", "Ethanol g"],
      ["Water", 500, null, null],
      ["Sucrose", 100, null, null],
      ["Spirit 40 % vol", 50, 40, formula("B4*C4/100", 20)],
    ],
    cells: ["D4"],
  },
  {
    rule: "constant-of-a-solute",
    what: "moles of dextrose monohydrate by a formula with the anhydrous molar mass",
    rows: [
      ["Ingredient", "g", "Moles"],
      ["Water", 500, null],
      ["Sucrose", 100, formula("B3/342.3", 0.2921)],
      ["Dextrose monohydrate", 50, formula("B4/180.16", 0.2775)],
    ],
    cells: ["C4"],
  },
  ...["(adds up to 100)", "100-%-Probe", "and so"].flatMap((label): RuleCase[] => [
    { rule: TOTAL, what: `wrong below 100 %: ${label}`, rows: inAll(label, 115), cells: ["B5"] },
    { rule: TOTAL, what: `right below 100 %: ${label}`, rows: inAll(label, 100), cells: [] },
  ]),
  { rule: TOTAL, what: "wrong below shares beside grams", rows: beside(115), cells: ["B5"] },
  { rule: TOTAL, what: "right below shares beside grams", rows: beside(100), cells: [] },
  {
    rule: "unknown-ingredient",
    what: "a line that 100 % is not reached without",
    rows: inAll("Cloud powder", 4, 6),
    cells: ["A5"],
  },
  {
    rule: TOTAL,
    what: "shares without the last, in the row above them",
    rows: above("SUM(B3:B5)", 0.95),
    cells: ["B1"],
  },
  { rule: TOTAL, what: "shares in the row above", rows: above("SUM(B3:B6)", 1), cells: [] },
  {
    rule: TOTAL,
    what: "shares of a class of which one is left out",
    rows: plurals("counts (%)", "SUM(B7:B8)", 75),
    cells: ["B10"],
  },
  { rule: TOTAL, what: "all of them", rows: plurals("counts (%)", "SUM(B7:B9)", 100), cells: [] },
  {
    rule: TOTAL,
    what: "counts of different things",
    rows: plurals("how many", "SUM(B7:B8)", 75),
    cells: [],
  },
];
