import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** A list whose amounts have no unit, above a sentence. */
const listAbove = (sentence: string): Rows => [
  ["Mangoeis", "Menge"],
  ["Mango", 700],
  ["Zucker", 130],
  ["Zitronensaft", 30],
  [],
  [sentence],
];

/** What is made for guests, some of it to spare, by what one of them gets. */
const forGuests = (label: string, worked: string): Rows => [
  ["guests on board", 36],
  ["some to spare", 3],
  [label, 80],
  ["so we make (g)", formula(worked, 3120)],
  [],
  ["part", "weigh (g)"],
  ["orange juice", 2560],
  ["sugar", 560],
];

/** Letters before an umlaut are no units, and what is counted may be a sum. */
export const umlautCases: readonly RuleCase[] = [
  ...(
    [
      ["Die Maschine fasst wenig, sonst in mehreren Gängen.", ["B1"]],
      ["Für alle Gäste reicht es zweimal.", ["B1"]],
      ["Alle Mengen in g.", []],
      ["Alles in Gramm.", []],
    ] as const
  ).map(([sentence, cells]) => ({
    ...{ rule: "input-without-unit", what: `amounts above "${sentence}"`, cells },
    rows: listAbove(sentence),
  })),
  ...(
    [
      ["a helping", "(B1+B2)*B3", ["B3"]],
      ["a helping", "(B1+2)*B3", ["B3"]],
      ["a helping (g)", "(B1+B2)*B3", []],
      ["sets", "B1*B3+B2", []],
    ] as const
  ).map(([label, worked, cells]) => ({
    ...{ rule: "input-without-unit", what: `"${label}" in ${worked}`, cells },
    rows: forGuests(label, worked),
  })),
];
