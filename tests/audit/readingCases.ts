import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST: Rows = [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Total", formula("SUM(B2:B3)", 650)],
  [],
];

const unit = { rule: "input-without-unit" } as const;

/** Readings under a heading, and temperatures that none is over. */
export const readingCases: readonly RuleCase[] = [
  {
    ...{
      ...unit,
      cells: [],
      what: "readings down a plan of the evening in which nobody looked at first",
    },
    rows: [
      ...LIST,
      ["When", "What", "Shown at the door (°C)"],
      ["18:00", "Hands are washed"],
      ["18:20", "Mix goes in", -16],
      ["19:10", "Freezer is opened", -17.5],
      ["20:00", "Ice is served", -16],
    ],
  },
  {
    ...{
      ...unit,
      cells: ["C9", "C10"],
      what: "readings down such a plan whose heading has no unit",
    },
    rows: [
      ...LIST,
      ["When", "What", "Shown"],
      ["18:00", "Hands are washed"],
      ["18:20", "Mix is poured"],
      ["19:10", "Freezer is at", -17.5],
      ["20:00", "Served at", -16],
    ],
  },
  {
    ...{ ...unit, cells: ["B9"], what: "a temperature below another one in words" },
    rows: [
      ...LIST,
      ["Freezer", "new"],
      ["Wanted", "scoops at −13 °C"],
      ["Opens", "9"],
      ["Freezer", -18],
    ],
  },
  {
    ...{ ...unit, cells: ["B9"], what: "a temperature below a free row" },
    rows: [...LIST, ["Door", "Read (°C)"], ["left", -16], [], ["Freezer", -18]],
  },
];

const days = (third: string): Rows => [
  ["No.", "on", "Water", "Sucrose", "Fructose", "Sum (g)"],
  [1, "3.5.", 500, 150, 20, formula("SUM(C2:E2)", 670)],
  [2, "10.5.", 500, third, 20, formula("SUM(C3:E3)", 520)],
  [3, "17.5.", 500, 140, 20, formula("SUM(C4:E4)", 660)],
];

/** Days as they are written in German, which are no numbers. */
export const dayCases: readonly RuleCase[] = [
  {
    ...{ rule: "number-as-text", cells: ["D3"], what: "an amount as text, not the days beside it" },
    rows: days("145,5"),
  },
  {
    ...{ rule: "unknown-ingredient", cells: [], what: "the days on which each version was made" },
    rows: days("145,5"),
  },
];
