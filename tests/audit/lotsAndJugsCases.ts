import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Tables of a class, whose substances stand across with what is known of them, above what each table weighs in. */
const jugs = (molar: number, particles: number): Rows => [
  ["Dissolved", "Sucrose", "Sodium chloride"],
  ["Molar mass (g/mol)", molar, 58.44],
  ["Particles", particles, 2],
  [],
  ["Table", "Sucrose (g)", "Sodium chloride (g)", "Water (g)"],
  [1, 30, 4, 500],
  [2, 30, 3, 500],
  [3, 11, 2, 250],
];

/** Two mixes in per cent, one line of each with the lot of another. */
const withLots = (heading: string): Rows => [
  ["Component", "w in %", heading],
  ["Cherries", 63.1, "L263"],
  ["Water", 18.3, null],
  ["Sucrose", 12.8, "L208"],
  ["Dextrose monohydrate", 4, "L217"],
  ["Lemon juice", 1.8, "L217"],
  ["Sum", formula("SUM(B2:B6)", 100)],
  ["Meant as", "scooped at −13"],
];

export const lotsAndJugsCases: readonly RuleCase[] = [
  ...(
    [
      ["of which one is wrong", jugs(324.3, 1), ["B2"]],
      ["with one that falls into none", jugs(342.3, 2), ["B3"]],
      ["that are right", jugs(342.3, 1), []],
    ] as const
  ).map(([what, rows, cells]): RuleCase => ({
    ...{ rule: "constant-of-a-solute", what: `constants below substances ${what}`, rows, cells },
  })),
  {
    ...{ rule: "more-than-dissolves", what: "shares with the lots of their batch", cells: [] },
    rows: withLots("Batch"),
  },
];
