import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const shares = (heading: string, sugar: number): Rows => [
  ["Masse für alle (g)", 800],
  ["Zutat", heading, "Masse in g"],
  ["Wasser", 0.647, formula("B3*$B$1", 517.6)],
  ["Saccharose", sugar, formula("B4*$B$1", 800 * sugar)],
  ["Fruktose", 0.126, formula("B5*$B$1", 100.8)],
];

const HEADINGS = ["Massenanteil w", "Gewichtsanteil", "Anteile"];

/** Shares by words that are put together, and without a unit. */
export const namedShareCases: readonly RuleCase[] = HEADINGS.flatMap((heading): RuleCase[] => [
  {
    rule: "percent-and-fraction",
    what: `per cent among fractions headed "${heading}"`,
    rows: shares(heading, 22.7),
    cells: ["B4"],
  },
  {
    rule: "more-digits-than-known",
    what: `three decimals of fractions headed "${heading}"`,
    rows: shares(heading, 0.227),
    cells: [],
  },
]);
