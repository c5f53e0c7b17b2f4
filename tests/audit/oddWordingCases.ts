import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 160 g of sucrose in 600 g of water freeze 1.55 K below it. */
const LIST: Rows = [
  ["went in", "g"],
  ["Water", 600],
  ["Sucrose", 160],
  ["Total", formula("SUM(B2:B3)", 760)],
  [],
];

const point = (label: string, value: number): Rows => [...LIST, [label, value]];

/** A list in parts, the first headed by a word that may also be what is said of a mix. */
const inParts = (water: number): Rows => [
  [null, "g"],
  ["SWEETNESS", null, null, null, null, null, "Below 0 by", 1.55, "K"],
  ["Sucrose", 160],
  ["ALL ELSE"],
  ["Water", water],
  [],
  ["Freezing point (°C)", -1.55],
];

const rows = (above: string): Rows => [
  [null, above],
  ["Flavour", "Whole milk", "Sucrose", "Lemon juice"],
  ["Milk", 800, 150, 5],
  ["Sharp", 700, 160, 60],
];

/** Units and headings as people put them who do not think of a machine that reads them. */
export const oddWordingCases: readonly RuleCase[] = [
  ...["fp is down by (K)", "fp lower by, in all [K]"].map((label) => ({
    ...{ rule: "freezing-point-sign", cells: [], what: `a depression by its unit: ${label}` },
    rows: point(label, 1.55),
  })),
  {
    ...{ rule: "freezing-point-sign", cells: ["B6"], what: "the same in degrees" },
    rows: point("fp is down to (°C)", 1.55),
  },
  {
    ...{ rule: "result-differs", cells: ["B6"], what: "a depression in K that is not the list's" },
    rows: point("fp is down by (K)", 3.1),
  },
  {
    ...{ rule: "result-differs", cells: [], what: "moles of what is dissolved: no grams of it" },
    rows: point("Moles dissolved", 0.467),
  },
  ...(
    [
      [600, []],
      [300, ["B7", "H2"]],
    ] as const
  ).map(([water, cells]) => ({
    ...{ rule: "result-differs", cells, what: `a list in parts with ${water} g of water` },
    rows: inParts(water),
  })),
  ...(
    [
      ["Grams for 1 pot", []],
      ["Gramm je Topf", []],
      ["for 1 pot", ["B2"]],
    ] as const
  ).map(([above, cells]) => ({
    ...{ rule: "input-without-unit", cells, what: `recipes in rows below “${above}”` },
    rows: rows(above),
  })),
  ...(
    [
      ["1 kg (in g)", []],
      ["Saturday (in kg)", []],
      ["for Saturday", ["B1"]],
    ] as const
  ).map(([heading, cells]) => ({
    ...{ rule: "input-without-unit", cells, what: `amounts headed “${heading}”` },
    rows: [
      ["Thing", heading],
      ["Water", 800],
      ["Sucrose", 200],
    ],
  })),
  ...(
    [
      ["Eaters", []],
      ["Kinder", []],
      ["A plate holds", ["B1"]],
    ] as const
  ).map(([label, cells]) => ({
    ...{ rule: "input-without-unit", cells, what: `what amounts are multiplied by: ${label}` },
    rows: [
      [label, 120],
      [],
      ["Ingredient", "In 100 g (g)", "Today (kg)"],
      ["Water", 80, formula("B4/100*60*$B$1/1000", 5.76)],
      ["Sucrose", 20, formula("B5/100*60*$B$1/1000", 1.44)],
    ],
  })),
];
