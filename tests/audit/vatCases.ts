import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** A batch above its lines, what they cost, and answers beside them: one stands in the row of the first line. */
const batchAbove = (answers: readonly Rows[number][], second = "B5*C5"): Rows => {
  const lines = [
    ["Item", "Qty (kg)", "Per kg (£)", "Line (£)", null],
    ["Batch", formula("SUM(B3:B5)", 2.5), null, formula("SUM(D3:D5)", 9.6), null],
    ["whole milk", 1.5, 2, formula("B3*C3", 3), null],
    ["cream 35 % fat", 0.6, 8, formula("B4*C4", 4.8), null],
    ["caster sugar", 0.4, 4.5, formula(second, 1.8), null],
  ];
  return lines.map((line, at) => [...line, ...(answers[at] ?? [])]);
};

const CALL = formula("RIME.DEPRESSION(A3:A5,B3:B5)", 1.91);

/** Two recipes in columns, and what water is in each of what the total, or something else, is called. */
const perVat = (label: string, total: string, water: number): Rows => [
  ["Menge in kg", "Erdbeere", "Zitrone"],
  ["Wasser", 1.2, 2.4],
  ["Zucker", 0.8, 0.9],
  ["Erdbeeren", 2, null],
  ["Zitronensaft", null, 0.5],
  [total, formula("SUM(B2:B5)", 4), formula("SUM(C2:C5)", 3.8)],
  [],
  ["Zucker im Mix %", 23, 24],
  [label, water, 2855],
];

/** A pair a row; their ice is asked for in one cell, or in each pair's own, and the tubs are read the next day. */
const pairsInRows = (asked: string, shares: readonly number[]): Rows => [
  ["Class freezer set to (°C)", -18],
  [],
  ["Who", "water", "sucrose", "lemon juice", "Ice of the water (%)", "In the tub next day (°C)"],
  ...(
    [
      ["Pair 1", 700, 200],
      ["Pair 2", 600, 300],
    ] as const
  ).map(([who, water, sucrose], at): Rows[number] => {
    const row = 4 + at;
    const call = `100*RIME.ICEFRACTION($B$3:$D$3,B${row}:D${row},${asked.replace("#", `${row}`)},"water")`;
    return [who, water, sucrose, 100, formula(call, shares[at] ?? 0), -10];
  }),
];

/** Totals above their lines, and what is in each vat. */
export const vatCases: readonly RuleCase[] = [
  ...[[[], [], ["Depression, K", CALL]], [["Depression, K", CALL]]].map((answers): RuleCase => ({
    rule: "inconsistent-formula",
    what: `a line's cost below the batch, an answer beside row ${answers.length}`,
    rows: batchAbove(answers, "B4*C5"),
    cells: ["D5"],
  })),
  {
    rule: "inconsistent-formula",
    what: "costs below the batch, each of its line",
    rows: batchAbove([[], [], ["Depression, K", CALL]]),
    cells: [],
  },
  ...(
    [
      ["$B$1", [86.7, 77.6], []],
      ["F#", [79, 64.6], []],
      ["F#", [86.7, 64.6], ["E4"]],
    ] as const
  ).map(([asked, shares, cells]) => ({
    ...{ rule: "result-differs", what: `ice at ${asked}: ${shares.join(", ")} %`, cells },
    rows: pairsInRows(asked, shares),
  })),
  ...(
    [
      ["Wasser je Wanne, g", "Wanne", 3030, []],
      ["Wasser je Wanne, g", "Wanne", 3900, ["B9"]],
      // A tenth of the vat may fill a box.
      ["Wasser je Dose, g", "Wanne", 303, []],
    ] as const
  ).map(([label, total, water, cells]) => ({
    ...{ rule: "result-differs", what: `"${label}" is ${water}`, cells },
    rows: perVat(label, total, water),
  })),
];
