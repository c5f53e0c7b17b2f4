import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const ICE: Rows = [
  ["Ingredient", "Amount (g)"],
  ["water", 750],
  ["sucrose", 200],
  ["lemon juice", 50],
];

/** What else a batch costs, added up in two rows of which the second is given. */
const extras = (sum: string, total: number): Rows => [
  ["Besides", "Number", "Each (£)", "£"],
  ["tub", 40, 0.3, formula("B2*C2", 12)],
  ["sticker", 40, 0.05, formula("B3*C3", 2)],
  ["power", 10, 0.3, formula("B4*C4", 3)],
  ["hands", 2, 12, formula("B5*C5", 24)],
  ["all that", null, null, formula(sum, total)],
  [],
  ...ICE,
];

/** Three days of one week and two of the next, each week added up. */
const halves: Rows = [
  ["Day", "Tubs", "£", "Three days", "Two days"],
  ["Fri", 10, formula("B2*3.5", 35), formula("SUM(C2:C4)", 210), formula("SUM(C5:C6)", 245)],
  ["Sat", 20, formula("B3*3.5", 70)],
  ["Sun", 30, formula("B4*3.5", 105)],
  ["Fri", 40, formula("B5*3.5", 140)],
  ["Sat", 30, formula("B6*3.5", 105)],
  [],
  ...ICE,
];

/** Moles of three dissolved things side by side, added up further down. */
const moles = (sum: string, total: number): Rows => [
  ["Added", "A", "B", "C"],
  ["Grams put", 20, 30, 40],
  ["Each mole, grams", 200, 300, 100],
  ["Parts", formula("B2/B3", 0.1), formula("C2/C3", 0.1), formula("D2/D3", 0.4)],
  [],
  ["Parts, all three", formula(sum, total)],
  [],
  ...ICE,
];

/** A recipe for twenty and what two houses get of it, by how many eat there. */
const houses = (syrup: string, sum: string, total: number): Rows => [
  ["Gramm", "Personen", "Wasser", syrup, "Zucker", "Masse"],
  ["Grundrezept in g", 20, 1500, 300, 200, formula("SUM(C2:E2)", 2000)],
  ...[10, 30].map((people, at) => {
    const row = 3 + at;
    const part = (column: string, grams: number) =>
      formula(`${column}2/$B$2*$B$${row}`, (grams * people) / 20);
    const parts = [part("C", 1500), part("D", 300), part("E", 200)];
    return [`Haus ${row}`, people, ...parts, formula(`SUM(C${row}:E${row})`, 100 * people)];
  }),
  [
    "Küche",
    ...[...["B", "C", "D", "E"].entries()].map(([at, column]) =>
      formula(`SUM(${column}3:${column}4)`, [40, 3000, 600, 400][at] ?? 0),
    ),
    formula(sum, total),
  ],
];

/** Costs of a day, added up so far line by line. */
const soFar: Rows = [
  ["Day", "Tubs", "£", "So far"],
  ["Sat", 10, formula("B2*3.5", 35), formula("SUM(C$2:C2)", 35)],
  ["Sun", 20, formula("B3*3.5", 70), formula("SUM(C$2:C3)", 105)],
  ["Mon", 30, formula("B4*3.5", 105), formula("SUM(C$2:C4)", 210)],
  ["Tue", 40, formula("B5*3.5", 140), formula("SUM(C$2:C5)", 350)],
  [],
  ...ICE,
];

/** Shares of a whole that is added up above the list, and their own sum beside it. */
const shares = (sum: string, total: number): Rows => [
  ["Batch weight (g)", formula("SUM(B4:B6)", 1000), formula(sum, total)],
  [],
  ["Ingredient", "Set (g)", "Share"],
  ["water", 750, formula("B4/$B$1", 0.75)],
  ["sucrose", 200, formula("B5/$B$1", 0.2)],
  ["lemon juice", 50, formula("B6/$B$1", 0.05)],
];

/** Two tubs under one another, whose totals have a name of the house; the second is typed. */
const tubs = (last: number): Rows => [
  ["what", "g"],
  ["water", 700],
  ["sucrose", 200],
  ["lime juice", 100],
  ["pail", formula("SUM(B2:B4)", 1000)],
  [],
  ["what", "g"],
  ["mango", 900],
  ["water", 500],
  ["sucrose", 300],
  ["pail", last],
];

/** Sums that stop before their line does, and totals by the name that sums have elsewhere. */
export const stoppingShortCases: readonly RuleCase[] = [
  {
    ...{
      rule: "total-incomplete",
      cells: ["D6"],
      what: "a sum that stops before the last product",
    },
    rows: extras("SUM(D2:D4)", 17),
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "a sum of all products above it" },
    rows: extras("SUM(D2:D5)", 41),
  },
  {
    ...{
      rule: "total-incomplete",
      cells: [],
      what: "two parts of a line, each added up by itself",
    },
    rows: halves,
  },
  {
    ...{ rule: "total-incomplete", cells: ["C1"], what: "shares without the last, above the list" },
    rows: shares("SUM(C4:C5)", 0.95),
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "all shares, above the list" },
    rows: shares("SUM(C4:C6)", 1),
  },
  {
    ...{ rule: "total-incomplete", cells: ["B6"], what: "a sum over two of three columns alike" },
    rows: moles("SUM(B4:C4)", 0.2),
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "a sum over three columns alike" },
    rows: moles("SUM(B4:D4)", 0.6),
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "what houses get, without the recipe itself" },
    rows: houses("Glukose", "SUM(F3:F4)", 4000),
  },
  {
    ...{ rule: "total-incomplete", cells: ["F5"], what: "what houses get, without the last house" },
    rows: houses("Glukose", "SUM(F2:F3)", 3000),
  },
  {
    ...{ rule: "unknown-ingredient", cells: ["D1"], what: "an unknown one beside how many eat" },
    rows: houses("Mondsirup", "SUM(F3:F4)", 4000),
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "an unknown one beside how many eat" },
    rows: houses("Mondsirup", "SUM(F3:F4)", 4000),
  },
  { ...{ rule: "total-incomplete", cells: [], what: "sums so far, line by line" }, rows: soFar },
  {
    ...{ rule: "total-incomplete", cells: ["B11"], what: "a typed total, called as a sum above" },
    rows: tubs(1400),
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "a right typed total, called as a sum above" },
    rows: tubs(1700),
  },
];
