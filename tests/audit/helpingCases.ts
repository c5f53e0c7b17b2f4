import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Flavours along their rows, and into how many vessels their totals go. */
const flavours = (label: string): Rows => [
  [label, 110],
  ["All amounts in grams"],
  ["Flavour", "water", "sucrose", "lemon juice", "Total g", "Cups"],
  ...["Lemon", "Sharp lemon", "Sweet lemon"].map((name, at): Rows[number] => [
    ...[name, 1500, 500 + 50 * at, 300, formula(`SUM(B${at + 4}:D${at + 4})`, 2300 + 50 * at)],
    formula(`E${at + 4}/$B$1`, (2300 + 50 * at) / 110),
  ]),
];

/** 150 g of sucrose in 850 g of water, with the ice of one basis under the label of the spoonful. */
const spoonful = (basis: "water" | "mix"): Rows => {
  const share = callFunction("ICEFRACTION", [["water"], ["sucrose"]], [[850], [150]], -12, basis);
  return [
    ["Ingredient", "Amount (g)"],
    ["water", 850],
    ["sucrose", 150],
    ["Total", formula("SUM(B2:B3)", 1000)],
    [],
    ["ice, share of the spoonful at −12 °C, %", Math.round(1000 * Number(share[0]?.[0])) / 10],
  ];
};

/** A camp's ice in ladles, and for how many of them it is enough. */
const ladles = (label: string, size: number, enough: string): Rows => [
  ["Ingredient", "All pots (g)"],
  ["water", 6000],
  ["sucrose", 2000],
  ["All together", formula("SUM(B2:B3)", 8000)],
  [],
  [label, size],
  [enough, formula("B4/B6", 8000 / size)],
];

/** What a laboratory weighs in, by fractions of mass. */
const samples = (label: string): Rows => [
  [label, 500],
  [],
  ["Material", "Mass fraction w", "Weighed in (g)"],
  ["water", 0.8, formula("B4*$B$1", 400)],
  ["sucrose", 0.2, formula("B5*$B$1", 100)],
];

/** What one cup, mould or spoonful holds, and how much of it is ice. */
export const helpingCases: readonly RuleCase[] = [
  {
    rule: "input-without-unit",
    what: "what a cup or mould holds, which totals of grams are divided by",
    rows: { Cup: flavours("Cup"), Mould: flavours("Fill of the mould") },
    cells: ["B1", "B1"],
  },
  {
    rule: "input-without-unit",
    what: "a cup in grams, and how many there are",
    rows: { Cup: flavours("Cup (g)"), Cups: flavours("Number of cups") },
    cells: [],
  },
  ...["Enough for ladles", "reicht für Schöpfer"].flatMap((enough): RuleCase[] => [
    {
      ...{ rule: "input-without-unit", cells: ["B6"], what: `what goes round: "${enough}"` },
      rows: ladles("ein Schöpfer", 90, enough),
    },
    {
      ...{ rule: "input-without-unit", cells: [], what: `with its unit: "${enough}"` },
      rows: ladles("ein Schöpfer (g)", 90, enough),
    },
  ]),
  {
    rule: "input-without-unit",
    what: "how many ladles all is shared out in",
    rows: ladles("Schöpfer", 90, "in einem (g)"),
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "what is weighed in for a trial in the laboratory",
    rows: samples("Laboransatz"),
    cells: ["B1"],
  },
  {
    rule: "input-without-unit",
    what: "the same with its unit",
    rows: samples("Laboransatz (g)"),
    cells: [],
  },
  {
    rule: "ice-of-water-or-mix",
    what: "the ice of the spoonful that is the ice of its water",
    rows: spoonful("water"),
    cells: ["B6"],
  },
  {
    rule: "ice-of-water-or-mix",
    what: "the ice of the spoonful",
    rows: spoonful("mix"),
    cells: [],
  },
];
