import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const ITEMS = ["water", "whole milk", "sucrose"] as const;
const GRAMS = [200, 650, 150] as const;
const asColumn = (values: readonly (string | number)[]) => values.map((value) => [value]);
const first = (name: string, ...more: readonly string[]): number =>
  callFunction(name, asColumn(ITEMS), asColumn(GRAMS), ...more)[0]?.[0] as number;

/** The functions' own answers for that list: the rule only has to tell the poured water from all of it. */
const ALL_WATER = first("COMPONENT", "water");
const POINT = first("FREEZINGPOINT");

const list: Rows = ITEMS.map((item, at) => [item, GRAMS[at] ?? null]);

/** A list with its answers below: the freezing point, and the water under some label. */
const below = (label: string, water: Rows[number][number], between: Rows = []): Rows => [
  ["What goes in", "Grams"],
  ...list,
  [],
  ["Freezing point (°C)", POINT],
  ...between,
  [label, water],
];

/** Answers over the list, each a formula. */
const above = (label: string, water: Rows[number][number]): Rows => [
  [label, water, "g"],
  [],
  ["Ingredient", "Amount (g)"],
  ...list,
];

/** A kilo of mix and two trays worked out from it. */
const trays = (pointC: number): Rows => [
  ["Mix (g)", null, 500, 3000],
  ["Ingredient", "For 1000 g (g)", "Small (g)", "Large (g)"],
  ...ITEMS.map((item, at): Rows[number] => [
    item,
    GRAMS[at] ?? null,
    formula(`B${at + 3}*C$1/1000`, (GRAMS[at] ?? 0) / 2),
    formula(`B${at + 3}*D$1/1000`, 3 * (GRAMS[at] ?? 0)),
  ]),
  [],
  ["Freezing begins at (°C)", pointC],
];

/** Samples in rows, with their water beside other answers; the second sample's as given, of a kind of water. */
const samples = (kind: string, water: number): Rows => [
  ["Sample", kind, "whole milk", "sucrose", "Total", "Water calc. (g)", "Dry matter (%)"],
  ["A", ...GRAMS, 1000, ALL_WATER, 100 - ALL_WATER / 10],
  ["B", ...GRAMS, 1000, water, 100 - water / 10],
  ["C", ...GRAMS, 1000, ALL_WATER, 100 - ALL_WATER / 10],
];

/** Bowls in columns, and on another sheet a row for each with its water; the second one's as given. */
const bowls = (water: Rows[number][number]): Readonly<Record<string, Rows>> => ({
  Overview: [
    ["Sorte", "Portionen", "Gefrierpunkt (°C)", "Wasser je Schüssel (g)"],
    ...["B", "C", "D"].map((letter, at): Rows[number] => [
      ["Eins", "Zwei", "Drei"][at] ?? "",
      formula(`Bowls!${letter}6/80`, 12.5),
      formula(`RIME.FREEZINGPOINT(Bowls!$A$3:$A$5,Bowls!${letter}3:${letter}5)`, POINT),
      at === 1 ? water : ALL_WATER,
    ]),
  ],
  Bowls: [
    ["Sorte", "Eins", "Zwei", "Drei"],
    ["Für eine Schüssel in g"],
    ...ITEMS.map((item, at): Rows[number] => [item, ...[0, 1, 2].map(() => GRAMS[at] ?? null)]),
    ["wiegt", ...["B", "C", "D"].map((letter) => formula(`SUM(${letter}3:${letter}5)`, 1000))],
  ],
});

/** A list for ten covers, its answers beside it. */
const forTen = (label: string, water: Rows[number][number]): Rows => [
  ["Item", "10 covers (g)"],
  ...ITEMS.map((item, at): Rows[number] => [
    ...[item, GRAMS[at] ?? null, null],
    ...(at === 0 ? ["freezing point, °C", POINT] : at === 1 ? [label, water] : []),
  ]),
];

/** A plain label that names an ingredient, and what tells that it is an answer. */
export const plainPartCases: readonly RuleCase[] = [
  {
    rule: "water-not-counted",
    what: "only the water poured in, under plain labels among answers",
    rows: {
      English: below("Water (g)", 200),
      German: below("Wassermenge (g)", 200),
      Kilo: below("Water in 1000 g of mix (g)", 200),
      Cup: below("Water in the cup (g)", 200),
      Becher: below("Wasser im Becher [g]", 200),
      Above: above("Wasser", formula("B4", 200)),
    },
    cells: ["B7", "B7", "B7", "B7", "B7", "B1"],
  },
  {
    rule: "water-not-counted",
    what: "all of the water, and water to be boiled, weighed or poured apart from answers",
    rows: {
      All: below("Water (g)", Math.round(ALL_WATER)),
      Boiled: below("Water to boil the jars (g)", 200),
      Apart: below("Water (g)", 200, [[], ["For the tray below:"]]),
      Above: above("Wasser", formula('RIME.COMPONENT(A4:A6,B4:B6,"water")', ALL_WATER)),
    },
    cells: [],
  },
  {
    rule: "water-not-counted",
    what: "only the water poured in, for as many as the list is for",
    rows: {
      English: forTen("water, g for 10", formula("B2", 200)),
      German: forTen("Wasser (g) für 10 Gäste", 200),
    },
    cells: ["E3", "E3"],
  },
  {
    rule: "water-not-counted",
    what: "all of the water for as many, and the water poured in for others",
    rows: {
      All: forTen("water, g for 10", Math.round(ALL_WATER)),
      Others: forTen("water, g for 4", 200),
    },
    cells: [],
  },
  {
    rule: "result-differs",
    what: "plain water far from the recipe's",
    rows: below("Wasser (g)", Math.round(1.3 * ALL_WATER)),
    cells: ["B7"],
  },
  {
    rule: "result-differs",
    what: "the water of a helping, or of a vessel that takes the whole",
    rows: {
      Helping: below("Water in a cup (g)", 62),
      Whole: below("Wasser im Becher (g)", Math.round(ALL_WATER)),
    },
    cells: [],
  },
  {
    rule: "error-in-an-amount",
    what: "plain water that is an error",
    rows: above("Water", formula('RIME.COMPONENT(A4:A6,B4:B6,"watr")', { error: "#VALUE!" })),
    cells: ["B1"],
  },
  {
    rule: "freezing-point-sign",
    what: "where freezing begins, below a kilo and the trays made from it",
    rows: trays(-POINT),
    cells: ["B7"],
  },
  { rule: "freezing-point-sign", what: "the same below zero", rows: trays(POINT), cells: [] },
  {
    rule: "per-water-or-per-mix",
    what: "sugar to 100 g of water that is the share of the mix",
    rows: below("Sugar to 100 g of water (g)", Math.round(first("COMPONENT", "sugars")) / 10),
    cells: ["B7"],
  },
  {
    rule: "water-not-counted",
    what: "only the water poured in, whatever kind, in samples that run across",
    rows: { Tap: samples("tap water", 200), Drinking: samples("Trinkwasser", 200) },
    cells: ["F3", "F3"],
  },
  {
    rule: "result-differs",
    what: "all of the water in samples that run across",
    rows: samples("Trinkwasser", ALL_WATER),
    cells: [],
  },
  {
    rule: "water-not-counted",
    what: "the water of a bowl that is read from its line, in a row for each bowl",
    rows: bowls(formula("Bowls!C3", 200)),
    cells: ["D3"],
  },
  {
    rule: "result-differs",
    what: "the water of the bowls beside one whose water is read from its line",
    rows: bowls(formula("Bowls!C3", 200)),
    cells: [],
  },
];
