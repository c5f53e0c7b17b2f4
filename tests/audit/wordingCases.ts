import type { Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const mix: Rows = [["Ingredient", "g"], ["Water", 600], ["Sucrose", 150], ["Lemon juice", 50], []];
const MILK = (heading: string, said: string | null): Rows => [
  ["Zutat", "Menge (g)", heading],
  ["Vollmilch", 500, said],
  ["Zucker", 100, null],
];
/** 600 + 250 + 150 + 20 = 1020. */
const lot = (label: string, weight: number, beside: Rows[number] = []): Rows => [
  ["What goes in", "per mould (g)"],
  ["Water", 600],
  ["Strawberries", 250],
  ["Sucrose", 150],
  ["Lemon juice", 20],
  [label, weight, ...beside],
];

/** Sugar solutions whose headings say that their parts were weighed in. */
const solutions = (sugar: string, water: string, share: number): Rows => [
  ["Solution", "Sucrose, % of the solution", sugar, water],
  [1, 10, 20, 180],
  [2, share, 60, 140],
  [3, 20, 40, 160],
];

/** Sheets in words that are told by what they say and where they stand. */
export const wordingCases: readonly RuleCase[] = [
  ...[
    ["Sucrose weighed (g)", "Water weighed (g)"],
    ["Saccharose eingewogen (g)", "Wasser abgewogen (g)"],
  ].flatMap(([sugar = "", water = ""]): RuleCase[] => [
    {
      rule: "per-water-or-per-mix",
      what: `a share of the solution that is per 100 g of water, beside "${sugar}"`,
      rows: solutions(sugar, water, 42.9),
      cells: ["B3"],
    },
    {
      rule: "per-water-or-per-mix",
      what: `a share of the solution beside "${sugar}"`,
      rows: solutions(sugar, water, 30),
      cells: [],
    },
  ]),
  {
    ...{ rule: "total-incomplete", cells: ["B6"] },
    what: "the typed weight of a batch, below amounts that are headed by the mould they are for",
    rows: lot("Batch weight", 1000),
  },
  {
    ...{ rule: "total-incomplete", cells: ["B6"], what: "what is in the bowl, typed" },
    rows: lot("in the bowl", 1000),
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "the weight of one empty bowl below a list" },
    rows: lot("Weight of the bowl", 900),
  },
  {
    ...{ rule: "total-incomplete", cells: [], what: "a weight of the lot that is right" },
    rows: lot("Finished mix weighs", 1020),
  },
  {
    ...{
      rule: "temperature-units-mixed",
      cells: ["B6"],
      what: "the temperature at which it is eaten",
    },
    rows: [...mix, ["wird gegessen bei", 10, "°C"]],
  },
  {
    ...{ rule: "temperature-units-mixed", cells: [], what: "a cellar in which it is kept" },
    rows: [...mix, ["Storage temp. of the syrup", 10, "°C"]],
  },
  {
    ...{
      rule: "caution-not-named",
      cells: ["A1:C3"],
      what: "a notice of allergens that names none",
    },
    rows: [...MILK("Regal", null), [], ["Allergene (LMIV)"], ["Regal", "B"]],
  },
  {
    ...{ rule: "caution-not-named", cells: [], what: "allergens under a heading of information" },
    rows: MILK("Allergeninformation", "Milch"),
  },
  {
    ...{ rule: "misses-its-target", cells: ["B7"], what: "a wish for what it shall be" },
    rows: [...mix, [], ["Was soll es werden?", "scooped at −13"]],
  },
  {
    ...{ rule: "misses-its-target", cells: [], what: "a style of something else" },
    rows: [...mix, [], ["Style of music", "jazz"]],
  },
];
