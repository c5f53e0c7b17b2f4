import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST = [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Total", formula("SUM(B2:B3)", 650)],
] as const;

/** Two ingredients, and what a formula makes of them with what is said of a vessel. */
const ofVessels = (vessel: string, heading: string, worked: (row: number) => string): Rows => [
  [vessel, 6],
  [],
  ["Zutat", heading, "alle [g]"],
  ["Wasser", 0.8, formula(worked(4), 4.8)],
  ["Zucker", 0.2, formula(worked(5), 1.2)],
  ["Summe", formula("SUM(B4:B5)", 1), formula("SUM(C4:C5)", 6)],
];

/** Inputs whose formulas say what their labels do not: that they are so many grams, or so many of a hundred. */
export const inputUnitCases: readonly RuleCase[] = [
  ...(
    [
      ["°C", []],
      [null, ["B6"]],
    ] as const
  ).map(([unit, cells]): RuleCase => ({
    ...{ rule: "input-without-unit", what: `a row of temperatures, behind it ${unit}`, cells },
    rows: [...LIST, [], ["Temperature", -4, -8, -12, unit], ["Ice, %", 46, 70, 78]],
  })),
  ...(
    [
      ["pops of", []],
      [null, ["B6"]],
    ] as const
  ).map(([counted, cells]): RuleCase => ({
    ...{ rule: "input-without-unit", what: `a number, behind it ${counted}`, cells },
    rows: [...LIST, [], ["Mould holds", 10, counted, 75, "g"], ["Mix", formula("B6*D6", 750), "g"]],
  })),
  ...(
    [
      ["Mix per mould", ["B6"]],
      ["Eis je Form", ["B6"]],
      ["Mix per mould (g)", []],
      ["Moulds per run", []],
    ] as const
  ).map(([label, cells]) => ({
    rule: "input-without-unit",
    what: `a number that the total is divided by: ${label}`,
    rows: [...LIST, [], [label, 60], ["Moulds from it", formula("B4/B6", 10.8)]],
    cells,
  })),
  ...(
    [
      ["Becher fasst", ["B1"]],
      ["Becher fasst (g)", []],
    ] as const
  ).map(([label, cells]) => ({
    rule: "input-without-unit",
    what: `what the cups hold that a total fills, above the list: ${label}`,
    rows: [
      [label, 90],
      [],
      LIST[0],
      LIST[1],
      LIST[2],
      ["Total", formula("SUM(B4:B5)", 650)],
      [],
      ["Becher", formula("B6/B1", 7.2)],
    ],
    cells,
  })),
  ...(
    [
      ["Stays in the churn", ["B6"]],
      ["Bleibt im Topf hängen", ["B6"]],
      ["Stays in the churn, g", []],
      ["Days left in May", []],
    ] as const
  ).map(([label, cells]) => ({
    rule: "input-without-unit",
    what: `a number that the total is lessened by before it is divided: ${label}`,
    rows: [
      ...[...LIST, [], [label, 60], ["Filled weight (g)", 70]],
      ["Tubs from it", cells.length > 0 ? formula("(B4-B6)/B7", 8.4) : formula("B4/B7", 9.3)],
    ],
    cells,
  })),
  ...["Kettle", "Kettle holds", "Der Kessel fasst"].map((label) => ({
    rule: "input-without-unit",
    what: `what a vessel holds: shares times it are kilograms: ${label}`,
    rows: [
      [label, 6],
      [],
      ["Ingredient", "Share", "Weigh in (kg)"],
      ["Water", 0.8, formula("B4*$B$1", 4.8)],
      ["Sucrose", 0.2, formula("B5*$B$1", 1.2)],
      ["Together", formula("SUM(B4:B5)", 1), formula("SUM(C4:C5)", 6)],
    ],
    cells: ["B1"],
  })),
  {
    rule: "input-without-unit",
    what: "how many batches: grams times it are grams",
    rows: [
      ["Kettles full", 6],
      ["On the day", 2],
      [],
      ["Ingredient", "One batch (g)", "Today (g)"],
      ["Water", 800, formula("B5*$B$2", 1600)],
      ["Sucrose", 200, formula("B6*$B$2", 400)],
      ["Together", formula("SUM(B5:B6)", 1000), formula("SUM(C5:C6)", 2000)],
    ],
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "one of the pieces that grams are divided into",
    rows: [...LIST, [], ["One lolly", 80], ["Lollies", formula("B4/B6", 8.125)]],
    cells: ["B6"],
  },
  {
    rule: "input-without-unit",
    what: "a number of pieces that grams are divided into",
    rows: [...LIST, [], ["Lollies", 8], ["One lolly (g)", formula("B4/B6", 81.25)]],
    cells: [],
  },
  ...["Becher", "Glas", "Cup"].map((vessel): RuleCase => ({
    rule: "input-without-unit",
    what: `how many there are, since grams of one are multiplied by it: "${vessel}"`,
    rows: ofVessels(vessel, "1 Becher [g]", (row) => `B${row}*$B$1`),
    cells: [],
  })),
  {
    rule: "input-without-unit",
    what: "how much is made of what is given for a kilo",
    rows: ofVessels("How much of each", "1 kg (g)", (row) => `B${row}*$B$1`),
    cells: ["B1"],
  },
  {
    rule: "input-without-unit",
    what: "how much is made, with its unit, and how many",
    rows: {
      Unit: ofVessels("How much of each (kg)", "1 kg (g)", (row) => `B${row}*$B$1`),
      Many: ofVessels("How many of each", "1 kg (g)", (row) => `B${row}*$B$1`),
    },
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "how many there are, with a little more for what is lost",
    rows: ofVessels("Becher", "1 Becher [g]", (row) => `B${row}*$B$1*1.035`),
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "what a cup holds, since amounts for a kilo are multiplied by it",
    rows: ofVessels("Becher", "für 1000 g [g]", (row) => `B${row}*$B$1/1000`),
    cells: ["B1"],
  },
  {
    rule: "input-without-unit",
    what: "what a cup holds, since parts of the whole are multiplied by it",
    rows: ofVessels("Becher", "Anteil", (row) => `B${row}*$B$1`),
    cells: ["B1"],
  },
  {
    rule: "input-without-unit",
    what: "a scoop times guests, which are grams together",
    rows: [
      ...LIST,
      [],
      ["Guests tonight", 40],
      ["Scoop on the plate", 35],
      ["Mix needed (g)", formula("B6*B7", 1400)],
    ],
    cells: ["B7"],
  },
  {
    rule: "input-without-unit",
    what: "how full a tin is, which a formula takes per hundred, in German",
    rows: [
      ["Zutat", "Menge (g)"],
      ["Wasser", 500],
      ["Zucker", 150],
      ["Summe", formula("SUM(B2:B3)", 650)],
      [],
      ["gefüllt zu", 85],
      ["Masse in der Dose (g)", formula("B4*B6/100", 552.5)],
    ],
    cells: ["B6"],
  },
  {
    rule: "input-without-unit",
    what: "the wanted amount, in German",
    rows: [
      ["Gewünschte Menge", 2000],
      [],
      ["Zutat", "Grundrezept (g)", "Fürs Fest (g)"],
      ["Wasser", 500, formula("B4/$B$6*$B$1", 1538.5)],
      ["Zucker", 150, formula("B5/$B$6*$B$1", 461.5)],
      ["Summe", formula("SUM(B4:B5)", 650), formula("SUM(C4:C5)", 2000)],
    ],
    cells: ["B1"],
  },
  ...["bleibt hängen", "geht über Nacht verloren, h"].map((label): RuleCase => ({
    rule: "input-without-unit",
    what: `"${label}", whose letters between umlauts are no unit and whose last one is`,
    rows: [...LIST, [], [label, 5], ["Im Glas (g)", formula("B4*(1-B6/100)", 617.5)]],
    cells: label.endsWith(" h") ? [] : ["B6"],
  })),
  {
    rule: "input-without-unit",
    what: "the mix for one of what is counted",
    rows: [
      ...LIST,
      ...[[], ["Bars in a tray", 6], ["Mix for one bar", 74]],
      ["Mix needed (g)", formula("B6*B7", 444)],
    ],
    cells: ["B7"],
  },
  ...["Not ideal at all: lemon ice, 1 kg", "Not ideal at all: all in g"].map((title): RuleCase => ({
    rule: "input-without-unit",
    what: `amounts under "${title}"`,
    rows: [[title], [], ["Ingredient", "Amount"], ["Water", 500], ["Sugar", 150], ["Salt", 2]],
    cells: title.endsWith("in g") ? [] : ["B3"],
  })),
  ...(
    [
      ["Cabinet", ["B1"]],
      ["Kühlmöbel", ["B1"]],
      ["Cabinet (°C)", []],
    ] as const
  ).map(([label, cells]) => ({
    rule: "input-without-unit",
    what: `a cold number on another sheet than the list, which our function reads: ${label}`,
    rows: {
      Expected: [
        [label, -18],
        ["Ice, of the water (%)", formula("100*RIME.ICEFRACTION(Mix!A2:A3,Mix!B2:B3,B1)", 90)],
        ["Ledger", -12],
      ],
      Mix: LIST,
    },
    cells,
  })),
  ...(
    [
      ["Weights g. Milk and cream are from the farm.", []],
      ["Berry ice / grams / for the fair", []],
      ["What stands together must be alike. Grams per litre can.", []],
      ["Two trials (g; for the fair)", []],
      ["Grams and °C unless I say otherwise", []],
      ["Everything g", []],
      ["Alle Mengen in Gramm; Temperaturen in °C", []],
      ["Von Herrn P. übernommen, Gewichte in Gramm", []],
      ["Berry ice / pounds of fruit picked", ["B3"]],
      ["Two trials, 80 g of each to taste", ["B3"]],
      ["Sugar spun fine; gramophone on", ["B3"]],
    ] as const
  ).map(([title, cells]) => ({
    rule: "input-without-unit",
    what: `amounts on a sheet that says "${title}"`,
    rows: [[title], [], ["Ingredient", "old"], ["Water", 500], ["Sugar", 150], ["Salt", 2]],
    cells,
  })),
  ...(
    [
      ["Salt, kg", []],
      ["Salt", ["B6"]],
    ] as const
  ).map(([heading, cells]) => ({
    rule: "input-without-unit",
    what: `amounts taken over from a column headed "${heading}"`,
    rows: [
      [null, heading.replace("Salt", "Ice and water"), heading],
      ["mild", 4, 0.3],
      ["usual", 4, 0.6],
      [],
      [],
      [null, "water", "salt", "freezes at °C"],
      ["mild", formula("B2", 4), formula("C2", 0.3), -4.4],
      ["usual", formula("B3", 4), formula("C3", 0.6), -9.1],
    ],
    cells,
  })),
  ...(
    [
      ["Base, g:", []],
      ["Base:", ["G1"]],
    ] as const
  ).map(([head, cells]) => ({
    rule: "input-without-unit",
    what: `pairs in a row that begins with "${head}"`,
    rows: [
      [head, "whole milk", 620, "cream 35 %", 180, "sugar", 120],
      [],
      ["honey g", "whole milk", "cream 35 %", "sugar", "sum g"],
      ...[0, 20, 40].map((honey, at) => [
        ...[honey, formula("$C$1", 620), formula("$E$1", 180), formula("$G$1", 120)],
        formula(`SUM(A${at + 4}:D${at + 4})`, 920 + honey),
      ]),
    ],
    cells,
  })),
  ...(
    [
      ["A3*B6", ["B6"]],
      ["A3*B6", []],
    ] as const
  ).map(([text, cells]) => ({
    rule: "input-without-unit",
    what: `a number that ${text} reads and gives ${cells.length > 0 ? "a number" : "an error"}`,
    rows: [
      ...LIST,
      [],
      ["Buckets", 4],
      ["Of all", formula(text, cells.length > 0 ? 3 : { error: "#VALUE!" })],
    ],
    cells,
  })),
];
