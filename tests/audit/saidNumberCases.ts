import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** A recipe of five lines with its total in row 7, and what is worked out below. */
const made = (...more: Rows): Rows => [
  ["Ingredient", "Amount (g)"],
  ...["Water", "Sucrose", "Fructose", "Glucose", "Lemon juice"].map((name) => [name, 100]),
  ["Total", formula("SUM(B2:B6)", 500)],
  ...more,
];

/** Numbers in formulas that words say in another form: per cent of what is taken or added, units of other units. */
export const saidNumberCases: readonly RuleCase[] = [
  ...(
    [
      ["Litres (30 % overrun, 1.1 kg/L mix)", []],
      ["Litres, 1.1 kg/L mix", ["B8"]],
      ["Litres (35 % overrun, 1.1 kg/L mix)", ["B8"]],
    ] as const
  ).map(([label, cells]): RuleCase => ({
    ...{ rule: "hard-coded-number", cells },
    what: `how much more there is than without it, under "${label}"`,
    rows: made([label, formula("B7*1.3", 650)]),
  })),
  ...(
    [
      ["Dextrose is the monohydrate (9.1 % crystal water).", []],
      ["Dry matter: sucrose 100, lemon juice 90.9 %.", []],
      ["Dextrose is the monohydrate (9 % crystal water).", ["B8"]],
    ] as const
  ).map(([note, cells]): RuleCase => ({
    ...{ rule: "hard-coded-number", cells },
    what: `a share of what is read, with the note "${note}"`,
    rows: made(["Without its water (g)", formula("0.909*B4", 200)], [], [note]),
  })),
  ...(
    [
      ["in lb", []],
      ["a jug", ["B8"]],
    ] as const
  ).map(([label, cells]): RuleCase => ({
    ...{ rule: "hard-coded-number", cells },
    what: `a factor between units, "${label}"`,
    rows: made([label, formula("B7/16", 31.3)]),
  })),
];
