import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf, temperatures, upTo } from "../strollers/words";
import { hundredth } from "./words";

const VOICE: Voice = {
  lead: "has",
  honey: "Honey, so none for babies (under 12 months).",
  alcohol: "Boozy: no kids, no mums-to-be, no drivers (alcohol).",
  nuts: "Whole nuts, under-fives could choke.",
  egg: "Raw yolks: mix must see 71 °C, or buy them pasteurised.",
};

const FACTS: readonly (readonly [string, ResultPlan])[] = [
  ["Starts freezing, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Pulled down by, K", { states: "depression", as: "typed", decimals: 1 }],
  [
    "Of its water frozen in the cart at −12 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  ],
  ["Sugars per 100 g water, g", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

const LEFT = [
  "Churned",
  "Flavour",
  ...FACTS.map(([label]) => label),
  "Texture",
  "On the chalkboard",
  "Tub, °C",
];

/** Where the weights begin. */
const FIRST = LEFT.length + 1;

/** The columns of the left half for one flavour. */
function factsOf(
  sheet: CorpusSheet,
  recipe: MarkedRecipe & { lines: string },
  heads: readonly Spot[],
  row: number,
) {
  FACTS.forEach(([, plan], index) => {
    const place = { row, column: 2 + index };
    resultAt(sheet, recipe, heads[2 + index]!, place, plan, () => recipe.lines);
  });
  nameTarget(sheet, recipe, { row, column: 2 + FACTS.length });
  tellIn(sheet, recipe, { row, column: 3 + FACTS.length }, VOICE);
}

/** A season in rows: what a flavour is like at the left, what goes into it at the right. */
function season(kit: Kit, sheet: CorpusSheet): number {
  const { random, marked } = kit;
  const mades = kit.make(5).map((made) => called(upTo(made, 3000), { sugar: "granulated sugar" }));
  put(sheet, 0, 0, "Pushcart, summer. One row = one churn, kilos at the right");
  const heads = putRow(sheet, 2, 0, LEFT);
  const amountLabel = put(sheet, 1, FIRST, "kg into the pail");
  const items = putRow(sheet, 2, FIRST, itemsOf(mades));
  put(sheet, 2, FIRST + items.length, "pail, kg");
  const tubs = mades.map((made, index) => {
    const row = 3 + index;
    putRow(sheet, row, 0, [`${2 + 3 * index} July`, made.title]);
    const plan = { items, unit: "kg", format: "0.000", amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    factsOf(sheet, recipe, heads, row);
    return put(sheet, row, LEFT.length - 1, shown(-random.whole(118, 149) / 10, "0.0"));
  });
  temperatures(kit, heads.at(-1)!, tubs);
  const end = 3 + mades.length;
  put(sheet, end, 1, "kilos used up");
  [...items, { ...items.at(-1)!, column: FIRST + items.length }].forEach(({ column }) => {
    const parts = mades.map((_, index) => ({ sheet: sheet.name, row: 3 + index, column }));
    sumOf(kit, sheet, { row: end, column }, parts, "0.000");
  });
  marked.notes.push(put(sheet, end + 1, 1, "Wash the pail while it is still cold."));
  return end + 3;
}

/** What was sold where, in cups and money. */
function sales(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const heads = putRow(sheet, 0, 0, ["Pitch", "Cups", "Price, $", "Taken, $"]);
  const rows = ["Bandstand", "Ferry steps", "Library lawn", "Ball game"].map((pitch, index) => {
    const row = 1 + index;
    const [, cups] = putRow(sheet, row, 0, [pitch, random.whole(20, 90), shown(4.5, "0.00")]);
    return [cups!, put(sheet, row, 3, shown(`=B${row + 1}*C${row + 1}`, "0.00"))];
  });
  const taken = columnOf(rows, 1);
  kit.marked.formulaColumns.push({ spots: taken, heading: heads[3]!, fixed: [] });
  put(sheet, 5, 0, "July");
  sumOf(kit, sheet, { row: 5, column: 1 }, columnOf(rows, 0));
  sumOf(kit, sheet, { row: 5, column: 3 }, taken, "0.00");
  hundredth(
    kit,
    sheet,
    { row: 0, column: 5 },
    {
      heads: ["Where the money went", "% of takings"],
      ...{ items: ["Ingredients", "Ice and gas", "Pitch fees", "Left for us"], total: "All" },
    },
  );
  note(kit, sheet, 8, 0, "Ferry steps only when the boats run.");
}

function pushcart(kit: Kit): void {
  season(kit, addSheet(kit.marked.book, "Churns"));
  sales(kit, addSheet(kit.marked.book, "Takings"));
}

/** A pushcart's season. */
export const pushcarts: readonly Layout[] = [
  {
    name: "pushcart season, a churn in each row, kilos at the right",
    language: "en",
    build: pushcart,
  },
];
