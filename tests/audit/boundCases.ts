import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 150 g of sucrose in 850 g of water freeze at −1.0 °C. */
const LIST: Rows = [["Ingredient", "g"], ["Water", 850], ["Sucrose", 150], []];

const worked = (headings: readonly string[], point: number): Rows => [
  ...LIST,
  ["Freezing point (°C)", point],
  [],
  ["Our aim", ...headings],
  [
    "Freezing point (°C)",
    -4,
    -2,
    formula("B5", point),
    formula('IF(D8<B8,"too low",IF(D8>C8,"too high","yes"))', "yes"),
  ],
];

const typed = (headings: readonly string[], point: number): Rows => [
  ...LIST,
  [null, ...headings],
  ["Gefrierpunkt (°C)", -4, -2, point],
];

/** What stands left of its names is mixed; the pack is what the price is divided by. */
const lollies = (point: number): Rows => [
  ["Put in (g)", "What", "Packet costs (£)", "Packet holds (g)", "Used up (£)"],
  [850, "water", 0, 2000, formula("C2/D2*A2", 0)],
  [150, "sucrose", 1.2, 500, formula("C3/D3*A3", 0.36)],
  [formula("SUM(A2:A3)", 1000), "altogether"],
  [null, "Freezing point (°C)", point],
];

const result = { rule: "result-differs" } as const;

/** What stands among answers and amounts and is none: bounds of an answer, and what a packet holds. */
export const boundCases: readonly RuleCase[] = [
  {
    ...{ ...result, cells: [], what: "bounds beside the answer that they are compared with" },
    rows: worked(["a", "b", "we have", "fits?"], -1),
  },
  {
    ...{ ...result, cells: ["D6"], what: "an answer behind its bounds" },
    rows: typed(["von", "bis", "haben wir"], -3),
  },
  {
    ...{ ...result, cells: [], what: "bounds with a unit of their own" },
    rows: typed(["at least °C", "at most (°C)", "found"], -1),
  },
  {
    ...{ ...result, cells: ["B6"], what: "a typed answer whose heading says no bound" },
    rows: typed(["Monday", "Tuesday", "Wednesday"], -1),
  },
  {
    ...{ ...result, cells: [], what: "what packets hold, right of amounts left of their names" },
    rows: lollies(-1),
  },
  {
    ...{ ...result, cells: ["C5"], what: "a wrong answer below amounts left of their names" },
    rows: lollies(-4),
  },
];
