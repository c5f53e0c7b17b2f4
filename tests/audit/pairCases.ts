import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** A mix of shares, worked out for a class and for each pair; one of the pair's amounts may be typed over. */
const forPairs = (waterOfPair: number, share: Rows[number][number] = 0.5): Rows => [
  ["Class (g)", 2000, "Pairs", 10],
  [],
  ["Component", "Part of the mix", "Class, g", "Each pair, g"],
  ["Syrup of the house", share, formula("$B$1*B4", 1000), formula("C4/$D$1", 100)],
  [
    "Water",
    0.4,
    formula("$B$1*B5", 800),
    waterOfPair === 80 ? formula("C5/$D$1", 80) : waterOfPair,
  ],
  ["Sucrose", 0.1, formula("$B$1*B6", 200), formula("C6/$D$1", 20)],
  ["Total", formula("SUM(B4:B6)", 1), formula("SUM(C4:C6)", 2000), formula("SUM(D4:D6)", 200)],
];

/** Two parts of water and one of sucrose for a class and for each pair. */
const sorbet = (waterOfPair: ReturnType<typeof formula> | number): Rows => [
  ["Class (g)", 3000, "Pairs", 10],
  [],
  ["Component", "Part of the mix", "Class, g", "Each pair, g"],
  ["Water", 0.66, formula("$B$1*B4", 1980), waterOfPair],
  ["Sucrose", 0.33, formula("$B$1*B5", 990), formula("C5/$D$1", 99)],
  ["Lemon juice", 0.01, formula("$B$1*B6", 30), formula("C6/$D$1", 3)],
  [],
  ["To be served as", "scooped at −13"],
];

/** The sorbet above, and its sugars once more. */
const withSugars: Rows = [
  ["Ingredient", "g"],
  ["Water", 600],
  ["Sucrose", 260],
  ["Fructose", 20],
  ["Target", "scooped at −13"],
  [],
  ["Of these sugars", "g"],
  ["Sucrose", formula("B3", 260)],
  ["Fructose", formula("B4", 20)],
  ["together", formula("SUM(B8:B9)", 280)],
];

/** Grams that are worked out from shares, and rows that weigh as much as others. */
export const pairCases: readonly RuleCase[] = [
  {
    ...{
      rule: "total-incomplete",
      cells: [],
      what: "an unknown half of a mix that the totals count",
    },
    rows: forPairs(80),
  },
  {
    ...{ rule: "unknown-ingredient", cells: ["A4"], what: "half of a mix that the totals count" },
    rows: forPairs(80),
  },
  {
    ...{
      rule: "value-from-outside",
      cells: ["B4"],
      what: "a share from which grams are worked out",
    },
    rows: forPairs(80, formula("'[Old.xlsx]Mix'!$B$4", 0.5)),
  },
  {
    ...{ rule: "ingredient-twice", cells: ["A4"], what: "rounded to make the sum fit" },
    rows: [
      ["Ingredient", "g"],
      ["Water", 1107],
      ["Sucrose", 400],
      ["Water", 1104],
    ],
  },
  {
    ...{ rule: "ingredient-twice", cells: [], what: "two additions of water" },
    rows: [
      ["Ingredient", "g"],
      ["Water", 1107],
      ["Sucrose", 400],
      ["Water", 1080],
    ],
  },
  {
    ...{
      rule: "misses-its-target",
      cells: [],
      what: "a mix of which one pair's amount is typed over",
    },
    rows: sorbet(120),
  },
  {
    ...{ rule: "formula-overwritten", cells: ["D4"], what: "one pair's amount" },
    rows: sorbet(120),
  },
  {
    ...{
      rule: "misses-its-target",
      cells: [],
      what: "the sugars of a mix, said once more below it",
    },
    rows: withSugars,
  },
  {
    ...{
      rule: "more-than-dissolves",
      cells: [],
      what: "the sugars of a mix, said once more below it",
    },
    rows: withSugars,
  },
];
