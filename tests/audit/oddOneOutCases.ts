import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const drawn = (...readings: readonly [number, number, number]): Rows => [
  ["Trial", "Drawn from machine at (°C)"],
  ...readings.map((reading, at) => [`Trial ${at + 1}`, reading]),
];

/** Water in recipes one to a row, below a row that has a price for each ingredient only. */
const priced = (heading: string): Rows => [
  ["Rezept", "Zucker", "Vollmilch", "alles (kg)", heading],
  ["€ je kg", 0.9, 1.5],
  ["Milcheis", 0.2, 1.4, formula("SUM(B3:C3)", 1.6), 1230],
  ["Vanilleeis", 0.4, 1.5, formula("SUM(B4:C4)", 1.9), "1318 "],
  ["Weißes Eis", 0.3, 1.4, formula("SUM(B5:C5)", 1.7), 1230],
];

/** True and false examples of the one value of a column that is unlike the others. */
export const oddOneOutCases: readonly RuleCase[] = [
  {
    rule: "temperature-units-mixed",
    what: "one of three trials in °F",
    rows: drawn(-5.2, 21, -5.4),
    cells: ["B3"],
  },
  {
    rule: "temperature-units-mixed",
    what: "one of three trials that is warmer in either unit",
    rows: drawn(-5.2, 5, -5.4),
    cells: [],
  },
  ...(
    [
      ["of a freezer in °F", "Plate freezer at six (°C)", ["B4"]],
      ["of a machine that may thaw", "Drawn from machine at (°C)", []],
    ] as const
  ).map(([what, heading, cells]) => ({
    rule: "temperature-units-mixed",
    what: `three readings apart, one ${what}`,
    rows: [["Trial", heading], ...drawn(-17, -13, 9).slice(1)],
    cells,
  })),
  {
    rule: "temperature-units-mixed",
    what: "the first of three readings, from which it was cooled",
    rows: drawn(21, -5.2, -5.4),
    cells: [],
  },
  {
    rule: "number-as-text",
    what: "an answer below a heading with a blank cell between",
    rows: priced("Wasser darin (g)"),
    cells: ["E4"],
  },
  {
    rule: "number-as-text",
    what: "a number among others below a heading that names no number",
    rows: priced("Etikett"),
    cells: [],
  },
];
