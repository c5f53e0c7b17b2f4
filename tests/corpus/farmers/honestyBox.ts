import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { parted, table } from "./words";

const VOICE: Voice = {
  lead: "Lid says: contains",
  honey: "Lid says: honey, not for babies under 12 months.",
  alcohol: "Lid says: alcohol, not for children, when pregnant or when driving.",
  nuts: "Lid says: whole nuts, under-5s may choke.",
  egg: "Raw yolk, so the custard sees 71 °C (or it's pasteurised).",
};

const OWN = { water: "cold water", "whole milk": "milk (whole)", honey: "clear honey" };

/** Numbers left of their words, as she writes them. */
const PLANS: readonly (readonly [string, ResultPlan])[] = [
  ["°C is where it starts to freeze", { states: "freezing point", as: "typed", decimals: 1 }],
  ["K lower than plain water", { states: "depression", as: "formula" }],
  [
    "% of the water is ice in the box at −10 °C",
    { states: "ice of water", as: "typed", temperatureC: -10, decimals: 0 },
  ],
  [
    "% of the water is ice in a home freezer at −18 °C",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

function numbersFirst(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  let next = row;
  for (const [words, plan] of PLANS) {
    const label = { sheet: sheet.name, row: next, column: 3 };
    if (!resultAt(sheet, recipe, label, { row: next, column: 2 }, plan)) continue;
    put(sheet, next++, 3, words);
  }
  return next;
}

/** A recipe as parts of one, the bucket's grams before them; gives the next free row. */
function ice(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, bucket: Spot): number {
  put(sheet, row, 0, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 1, column: 1 },
    {
      heads: ["weigh (g)", "part of 1", "what"],
      cells: (name, grams) => [undefined, shown(inUnit(grams, "fraction"), "0.000"), name],
      ...{ name: 2, amount: 1 },
    },
  );
  const alsoAmounts = beside(kit, heads[0]!, amounts, {
    ...{ sheet, format: "0", fixed: [bucket] },
    content: (spot) => `=${a1(spot)}*${fixed(bucket)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 1 }, alsoAmounts, "0");
  put(sheet, end, 3, "is the bucket");
  const lines = { names, amounts, alsoAmounts, total, unit: "fraction" } as const;
  const recipe = markRecipe(kit, made, { ...lines, amountLabel: heads[1]! });
  const next = numbersFirst(sheet, recipe, end + 1);
  nameTarget(sheet, recipe, { row: next, column: 2, label: "wanted:" });
  return tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE) + 1;
}

const DUTY = [
  ["week of", "fills the box", "empties the tin"],
  ["1 July", "Morag", "Jean"],
  ["8 July", "Jean", "Fergus"],
  ["15 July", "Fergus", "Morag"],
];

const TUBS = [
  ["small tub", 120, 2.5],
  ["big tub", 450, 6.5],
] as const;

/** What the tubs cost, and what a kilogram comes to in each. */
function prices(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 8, 6, ["On the box", "holds g", "£ each", "£ a kg"]);
  const rows = TUBS.map(([tub, grams, pounds], index) =>
    putRow(sheet, 9 + index, 6, [tub, grams, shown(pounds, "0.00")]),
  );
  beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/${a1({ ...spot, column: 7 })}*1000`,
  });
}

/** Three ices below each other, who does what at the right. */
function honestyBox(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Box");
  put(sheet, 0, 0, "Honesty box at the road end");
  const words = { label: "Bucket takes (g)", bare: "Bucket takes" };
  const value = kit.random.pick([1500, 2000, 2500, 4000]);
  const bucket = input(kit, sheet, { row: 1, column: 0 }, { ...words, value });
  let row = 3;
  for (const made of kit.make(3)) {
    row = ice(kit, sheet, stillMet(called(hundred(made), OWN)), row, bucket);
  }
  table(sheet, { row: 3, column: 6 }, DUTY);
  prices(kit, sheet);
  parted(
    kit,
    sheet,
    { row: 13, column: 6 },
    {
      heads: ["tin money goes to", "%"],
      ...{ labels: ["next batch", "church roof", "lifeboat"], total: "of the tin" },
    },
  );
  note(kit, sheet, 20, 6, "Stone on the lid or the gulls have it.");
}

/** An honesty box at the roadside. */
export const honestyBoxes: readonly Layout[] = [
  { name: "honesty box on Mull, parts of one and a rota", language: "en", build: honestyBox },
];
