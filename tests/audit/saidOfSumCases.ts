import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** A cake in two parts, each with its sum above its lines. */
const parts = (first: string, sum: number): Rows => [
  ["Eistorte"],
  [],
  ["Boden", "Summe g", formula(first, sum)],
  [null, "Butter", 70],
  [null, "gemahlene Mandeln", 40],
  [null, "Zucker", 20],
  [],
  ["Füllung", "Summe g", formula("SUM(C9:C11)", 640)],
  [null, "Heidelbeeren", 300],
  [null, "Sahne 35 %", 250],
  [null, "Zucker", 90],
];

/** What is put to a kilogram of fruit. */
const added = (sum: string, value: number): Rows => [
  ["Zugaben je 1 kg Fruchtmark (in g)"],
  ["Zutat", "Aprikosen"],
  ["Wasser", 250],
  ["Zucker", 260],
  ["Zitronensaft", 40],
  ["Ergibt (g)", formula(sum, value)],
];

const granita = (below: string, sugar: number): Rows => [
  ["Coffee granita, everything in grams"],
  [null, "mild", "sweet"],
  ["brewed coffee", 500, 480],
  ["water", 300, 300],
  ["sugar", 90, 120],
  ["Weight", formula("SUM(B3:B5)", 890), formula("SUM(C3:C5)", 900)],
  [below, sugar, 13.3],
];

/** Two recipes on sheets of their own and a list of what comes of them. */
const sheets = (first: string, second: string): Readonly<Record<string, Rows>> => ({
  Overview: [
    ["recipe", "mass g"],
    [first, formula("Pear!B4", 800)],
    [second, formula("Lemon!B4", 700)],
    ["average", formula("AVERAGE(B2:B3)", 750)],
  ],
  Pear: [
    ["Pear", "g"],
    ["pears", 650],
    ["sugar", 150],
    ["sum", formula("SUM(B2:B3)", 800)],
  ],
  Lemon: [
    ["Lemon", "g"],
    ["lemon juice", 550],
    ["sugar", 150],
    ["sum", formula("SUM(B2:B3)", 700)],
  ],
});

const texts = (sum: string): Rows => [
  ["Menge", "Zutat"],
  ["120 g", "Zucker"],
  ["500 g", "Sahne 35 %"],
  ["60 g", "Rum 40 %"],
  [sum, "Gesamtes"],
];

/** What stands around sums: parts below them, a number added to them, words below them, and other sheets' sums. */
export const saidOfSumCases: readonly RuleCase[] = [
  ...(
    [
      ["SUM(C4:C6)", 130, []],
      ["SUM(C4:C5)", 110, ["C3"]],
    ] as const
  ).map(([sum, value, cells]) => ({
    rule: "total-incomplete",
    what: `a part with its sum above it: ${sum}`,
    rows: parts(sum, value),
    cells,
  })),
  ...(
    [
      ["1000+SUM(B3:B5)", 1550, []],
      ["SUM(B3:B5)+1000", 1550, []],
      ["1000+SUM(B3:B4)", 1510, ["B6"]],
    ] as const
  ).map(([sum, value, cells]) => ({
    rule: "total-incomplete",
    what: `what is put to a kilogram with that: ${sum}`,
    rows: added(sum, value),
    cells,
  })),
  {
    rule: "unknown-ingredient",
    what: "what is said of a mix below its sum",
    rows: granita("Brix, from the sugar alone", 10.1),
    cells: [],
  },
  {
    rule: "unknown-ingredient",
    what: "an unknown line above the sum",
    rows: granita("Brix, from the sugar alone", 10.1).with(3, ["Brox", 300, 300]),
    cells: ["A4"],
  },
  {
    rule: "unknown-ingredient",
    what: "a list of the sums of other sheets",
    rows: sheets("Pear", "Lemon"),
    cells: [],
  },
  ...(
    [
      ["680 g", []],
      ["80 g", ["B5"]],
    ] as const
  ).map(([sum, cells]) => ({
    rule: "unknown-ingredient",
    what: `amounts in words, at their end ${sum}`,
    rows: texts(sum),
    cells,
  })),
];
