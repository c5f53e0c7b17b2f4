import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Two ices in one list, each named beside its first line or, where `isSaid`, beside all; what goes into one tin and into all. */
const list = (isSaid: boolean): Rows => [
  ["Sort", "Tins", "Ingredient", "1 tin (g)", "all tins (g)"],
  ["Lemon", 3, "Water", 600, formula("D2*$B$2", 1800)],
  [isSaid ? "Lemon" : null, null, "Sugar", 200, formula("D3*$B$2", 600)],
  [isSaid ? "Lemon" : null, null, "Lemon juice", 100, formula("D4*$B$2", 300)],
  [null, null, "Subtotal", formula("SUM(D2:D4)", 900), formula("SUM(E2:E4)", 2700)],
  ["Milk", 2, "Whole milk", 800, formula("D6*$B$6", 1600)],
  [isSaid ? "Milk" : null, null, "Sugar", 150, formula("D7*$B$6", 300)],
  [isSaid ? "Milk" : null, null, "Water", 50, formula("D8*$B$6", 100)],
  [null, null, "Subtotal", formula("SUM(D6:D8)", 1000), formula("SUM(E6:E8)", 2000)],
];

/** Whole milk is 88.1 % water, lemon juice 92.3 %: 692 g and 755 g. */
const slip = (lemon: Rows[number][number], milk: Rows[number][number]): Rows => [
  ["Sort", "€ a slice", "Water in a tin (g)"],
  ["Lemon", 2.5, lemon],
  ["Milk", 2, milk],
];

/** Two lists whose lines say how they were measured; the second ice says so of its water, too: 692 g and 755 g. */
const diary = (milk: number): Rows => [
  ["How", "Ingredient", "g", "Ice weighs (g)", 890],
  ["weighed", "Water", 600, "Scoops", 14],
  ["weighed", "Sugar", 200],
  ["weighed", "Lemon juice", 100, "Water in it (g)", 692],
  [],
  ["How", "Ingredient", "g", "Ice weighs (g)", 980],
  ["about 4 cups", "Whole milk", 800, "Scoops", 16],
  ["a cup", "Sugar", 150],
  ["weighed", "Water", 50, "Water in it (g)", milk],
];

const read = formula('RIME.COMPONENT(List!C2:C4,List!D2:D4,"water")', 692);
const differs = { rule: "result-differs" } as const;

const named = [false, true].flatMap((isSaid): RuleCase[] => {
  const List = list(isSaid);
  const where = isSaid ? "each line" : "the first line";
  return [
    {
      ...{ ...differs, cells: [], what: `answers of ices that are named beside ${where}` },
      rows: { List, Slip: slip(692, 755) },
    },
    {
      ...{ ...differs, cells: ["C3"], what: `one of them that is wrong, named beside ${where}` },
      rows: { List, Slip: slip(692, 855) },
    },
    {
      ...{ ...differs, cells: [], what: `one below the formula of another, named beside ${where}` },
      rows: { List, Slip: slip(read, 755) },
    },
    {
      ...{ ...differs, cells: ["C3"], what: `a wrong one below a formula, named beside ${where}` },
      rows: { List, Slip: slip(read, 692) },
    },
  ];
});

/** Slips that say the answers of ices by their names, which stand beside the lines of one long list. */
export const slipCases: readonly RuleCase[] = [
  ...named,
  {
    ...{ ...differs, cells: [], what: "how a line was measured, which another list says, too" },
    rows: diary(755),
  },
  {
    ...{ ...differs, cells: ["E9"], what: "a wrong answer beside lines that say how" },
    rows: diary(692),
  },
];
