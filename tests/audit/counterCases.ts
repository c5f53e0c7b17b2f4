import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** A cake in two parts, with a freezing point of its filling and a sum of its base. */
const cake = (point: number, base = "SUM(C2:C3)"): Rows => [
  ["part", "item", "g"],
  ["base", "digestive biscuits", 200],
  ["base", "honey, average", 90],
  ["filling", "whole milk", 350],
  ["filling", "heavy cream", 250],
  ["filling", "sucrose", 110],
  [null, "base", formula(base, base === "SUM(C2:C3)" ? 290 : 200)],
  [null, "cake", formula("SUM(C2:C6)", 1000)],
  [],
  ["filling: freezing point (°C)", null, point],
];

/** What moulds need of a recipe for one. */
const moulds = (heading: string, times: number): Rows => [
  ["Item", "1 mould (g)", heading],
  ...[320, 60, 40].map((grams, at) => [
    ["heavy cream", "whole milk", "sucrose"][at] ?? "",
    grams,
    formula(`B${at + 2}*${times}`, grams * times),
  ]),
  ["Total", formula("SUM(B2:B4)", 420), formula("SUM(C2:C4)", 420 * times)],
];

/** Below a recipe its names once more, with what a kilogram costs. */
const prices = (heading: string): Rows => [
  ["Item", "g"],
  ["sour cherries", 1800],
  ["sucrose", 350],
  ["water", 700],
  ["Total", formula("SUM(B2:B4)", 2850)],
  [],
  [heading],
  ["sour cherries", 4.9],
  ["sucrose", 1.2],
  [],
  ["Costs (€)"],
  ["sour cherries", formula("B2*B8/1000", 8.82)],
  ["sucrose", formula("B3*B9/1000", 0.42)],
];

/** A custard with words beside its yolk. */
const custard = (words: string): Rows => [
  ["Item", "g", "How"],
  ["whole milk", 500, "warm it"],
  ["sucrose", 120],
  ["egg yolk", 80, words],
  ["Total", formula("SUM(B2:B4)", 700)],
  [],
  ["Contains: milk, egg"],
];

/** Lists of people who sell ices: parts, moulds, prices, custards. */
export const counterCases: readonly RuleCase[] = [
  { rule: "result-differs", what: "what the named part gives", rows: cake(-2), cells: [] },
  {
    ...{ rule: "result-differs", cells: ["C10"] },
    what: "what neither the named part gives nor the whole",
    rows: cake(-6),
  },
  { rule: "total-incomplete", what: "the sum of a named part", rows: cake(-2), cells: [] },
  {
    ...{ rule: "total-incomplete", cells: ["C7"] },
    what: "the sum of a named part that leaves a line of it out",
    rows: cake(-2, "SUM(C2:C2)"),
  },
  ...[
    { heading: "6 moulds", times: 6, cells: [] },
    { heading: "6 moulds", times: 7, cells: ["C2:C4"] },
    { heading: "for 6", times: 6, cells: [] },
    { heading: "6 June", times: 6, cells: ["C2:C4"] },
  ].map(({ heading, times, cells }): RuleCase => ({
    ...{ rule: "hard-coded-number", cells },
    what: `${String(times)} times as much under "${heading}"`,
    rows: moulds(heading, times),
  })),
  {
    ...{ rule: "input-without-unit", cells: [] },
    what: "prices below their heading with its unit",
    rows: prices("Prices (€ per kg)"),
  },
  {
    ...{ rule: "result-differs", cells: [] },
    what: "what an ingredient costs, which is no part of the mix",
    rows: prices("Prices (€ per kg)"),
  },
  {
    ...{ rule: "input-without-unit", cells: ["B8", "B9"] },
    what: "prices below a heading without one",
    rows: prices("What a kilo costs us"),
  },
  ...["cook to 82 °C", "pasteurisiert", "then nothing raw is left"].map((words): RuleCase => ({
    ...{ rule: "caution-not-named", cells: [] },
    what: `egg with "${words}" beside it`,
    rows: custard(words),
  })),
  ...["whisk in", "at 8 °C", "raw"].map((words): RuleCase => ({
    ...{ rule: "caution-not-named", cells: ["A1:C5"] },
    what: `egg with "${words}" beside it`,
    rows: custard(words),
  })),
];
