import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 150 g of sucrose in 600 g of water, with a label and what stands right of it. */
const labelled = (label: string, number: Rows[number][number]): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 600],
  ["Sucrose", 150],
  [],
  [label, number],
];

const solution = (constant: Rows[number][number]): Rows => [
  ["Substance", "m (g)", "M (g/mol)", "n (mol)"],
  ["Sucrose", 150, 342.3, formula("B2/C2", 150 / 342.3)],
  ["Water (g)", 600],
  ["Kf (K·kg/mol)", constant],
];

const weighed = (second: string, grams: number): Rows => [
  ["Substance", "Amount (g)"],
  ["Glucose monohydrate", 200],
  [second, grams],
];

const POINT = "Freezing point (°C)";
const ICE = "Ice, share of the water at −12 °C (%)";

export const impossibleCases: readonly RuleCase[] = [
  {
    rule: "freezing-point-sign",
    what: "a depression under the label of a freezing point is told",
    rows: labelled(POINT, 1.37),
    cells: ["B5"],
  },
  {
    rule: "freezing-point-sign",
    what: "450 is no freezing point, whatever stands beside it",
    rows: labelled(POINT, 450),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "450 typed beside the word is of something else",
    rows: labelled(POINT, 450),
    cells: [],
  },
  {
    rule: "freezing-point-sign",
    what: "a formula that gives 450 °C is wrong",
    rows: labelled(POINT, formula("B2*0.75", 450)),
    cells: ["B5"],
  },
  {
    rule: "result-differs",
    what: "a wrong share of ice is told",
    rows: labelled(ICE, 40),
    cells: ["B5"],
  },
  {
    rule: "result-differs",
    what: "−12 typed as a share is its temperature",
    rows: labelled(ICE, -12),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "too little water is told",
    rows: labelled("Water in the mix (g)", 500),
    cells: ["B5"],
  },
  {
    rule: "result-differs",
    what: "nobody types less than none",
    rows: labelled("Water in the mix (g)", -2.9),
    cells: [],
  },
  {
    rule: "cryoscopic-constant",
    what: "ten times the constant is told",
    rows: solution(18.6),
    cells: ["B4"],
  },
  {
    rule: "cryoscopic-constant",
    what: "−18 beside a constant is a temperature",
    rows: solution(-18),
    cells: [],
  },
  {
    rule: "more-than-dissolves",
    what: "more glucose than the water of the list dissolves",
    rows: weighed("Water", 100),
    cells: ["B2"],
  },
  {
    rule: "more-than-dissolves",
    what: "substances without anything that brings water are no mix",
    rows: weighed("Sodium chloride", 20),
    cells: [],
  },
];
