import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST: Rows = [
  ["Ingredient", "g"],
  ["Water", 700],
  ["Sucrose", 220],
  ["Vodka 40 %", 80],
];

/** Moulds side by side; each row's label carries its unit, or should. */
const moulds = (filling: string): Rows => [
  ...LIST,
  [],
  ["Mould", "Loaf", "Bars"],
  ["Pieces", 2, 40],
  [filling, 900, 75],
  ["Needed (g)", formula("B7*B8", 1800), formula("C7*C8", 3000)],
];

const price = (label: string): Rows => [
  ...LIST,
  ["Batch costs (€)", 4.5],
  [label, 0.06],
  ["One with its cone (€)", formula("B5/15+B6", 0.36)],
];

const without = { rule: "input-without-unit" } as const;

/** Inputs, totals and cautions as kitchens and shops write them. */
export const shopCases: readonly RuleCase[] = [
  {
    ...{ ...without, cells: ["B6"], what: "what a litre weighs" },
    rows: [...LIST, [], ["A litre weighs", 1090], ["Litres", formula("1000/B6", 0.92)]],
  },
  {
    ...{ ...without, cells: ["B8:C8"], what: "a row of fillings among rows that say theirs" },
    rows: moulds("Filling per piece"),
  },
  {
    ...{ ...without, cells: [], what: "a row of fillings in grams" },
    rows: moulds("Filling per piece (g)"),
  },
  {
    ...{ ...without, cells: ["B6"], what: "a price among prices in euros" },
    rows: price("A cone costs"),
  },
  { ...{ ...without, cells: [], what: "prices in euros" }, rows: price("A cone costs (€)") },
  {
    ...{ ...without, cells: [], what: "trays that are counted" },
    rows: [...LIST, [], ["Trays to fill", 4], ["Each (g)", formula("1000/B6", 250)]],
  },
  {
    ...{ rule: "total-incomplete", cells: ["B4"], what: "a typed total named by its vessel" },
    rows: [
      ["Ingredient", "g"],
      ["Water", 700],
      ["Sucrose", 220],
      ["in the bowl", 820],
    ],
  },
  {
    ...{ rule: "total-incomplete", cells: ["B4"], what: "a typed total named as the mix" },
    rows: [
      ["Ingredient", "g"],
      ["Water", 700],
      ["Sucrose", 220],
      ["Mix", 820],
    ],
  },
  {
    ...{ rule: "unknown-ingredient", cells: [], what: "a typed total in a pot" },
    rows: [
      ["Zutat", "g"],
      ["Wasser", 700],
      ["Zucker", 220],
      ["im Topf", 920],
    ],
  },
  // 250 g of sucrose in 1000 g of mix are 25 %, and 33.3 g to 100 g of the 750 g of water.
  {
    ...{ rule: "per-water-or-per-mix", cells: ["B5"], what: "a share of the mix that is rounded" },
    rows: [
      ["Ingredient", "g"],
      ["Water", 747],
      ["Sucrose", 253],
      [],
      ["Sugars to 100 g water (g)", 25],
    ],
  },
  {
    ...{ rule: "per-water-or-per-mix", cells: [], what: "sugar to 100 g of water, rounded" },
    rows: [
      ["Ingredient", "g"],
      ["Water", 747],
      ["Sucrose", 253],
      [],
      ["Sugars to 100 g water (g)", 34],
    ],
  },
  {
    ...{ rule: "caution-not-named", cells: ["A1:B4"], what: "when the cook adds the alcohol" },
    rows: [...LIST, [], ["Add the alcohol when the mix is cold."], ["Alcohol (g)", null, null, 26]],
  },
  {
    ...{ rule: "caution-not-named", cells: [], what: "what the eater is told of the alcohol" },
    rows: [...LIST, [], ["Contains alcohol."]],
  },
  {
    rule: "abv-as-mass",
    what: "whole grams of alcohol shown in tenths",
    rows: [
      ["Drink", "g", "% vol", "Pure alcohol (g)"],
      ["rum 40 %", 40, 40, { value: 13.3, format: "0.0" }],
      ["liqueur 25 %", 12, 25, { value: 3, format: "0.0" }],
    ],
    cells: ["D3"],
  },
  {
    ...{ rule: "more-than-dissolves", cells: [], what: "what is to be bought for a mix" },
    rows: {
      Mix: LIST,
      Store: [
        ["Item", "On hand (g)", "Needed (g)"],
        ["Sucrose", 100, formula("VLOOKUP(A2,Mix!$A$2:$B$4,2,FALSE)", 220)],
        ["Vodka 40 %", 0, formula("VLOOKUP(A3,Mix!$A$2:$B$4,2,FALSE)", 80)],
      ],
    },
  },
  {
    ...{ rule: "more-than-dissolves", cells: ["B2"], what: "the same as a mix of its own" },
    rows: {
      Mix: LIST,
      Other: [
        ["Item", "g"],
        ["Sucrose", 220],
        ["Vodka 40 %", 80],
      ],
    },
  },
  {
    ...{ rule: "unknown-ingredient", cells: [], what: "bottles whose strengths stand beside them" },
    rows: [
      ["Bottle", "% vol", "Shot (g)"],
      ["Herb liqueur of ours", 30, 20],
      ["Rum 54 %", 54, 15],
    ],
  },
];
