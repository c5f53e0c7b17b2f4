import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { absolute } from "../layouts/parts";
import { given } from "../lodgers/words";
import type { MarkedRecipe } from "../marks";
import { perKilo } from "../pilgrims/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf, upTo } from "../strollers/words";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Contains",
  honey: "Honey: not to be given to babies under 12 months.",
  alcohol: "Alcohol: adults only, not for pregnant guests or drivers.",
  nuts: "Whole nuts: choking hazard, keep from children under 5.",
  egg: "Raw egg yolk: cook the mix to 71 °C or buy pasteurised yolk.",
};

const FACTS: readonly Fact[] = [
  ["Starts freezing at (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  [
    "Frozen water at −12 °C (% of water)",
    { states: "ice of water", as: "typed", temperatureC: -12 },
  ],
  [
    "Sugars for every 100 g water (g)",
    { states: "sugar per 100 g water", as: "formula", format: "0.0" },
  ],
  ["Water, all of it (g)", { states: "water", as: "typed", decimals: 0 }],
];

const TOP = 5;

/** Codes, ingredients and prices down the left; gives the ingredients and the prices. */
function leftSide(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]) {
  putRow(sheet, TOP - 1, 0, ["Code", "Goes in", "£ per kg"]);
  const lines = mades.flatMap(({ lines: each, names }) =>
    each.map(({ en }, at) => [names[at]!, en] as const),
  );
  const english = new Map(lines);
  const rows = itemsOf(mades).map((name, index) => {
    const code = `B${10 + index}`;
    const price = shown(perKilo(kit, english.get(name)!), "0.00");
    return putRow(sheet, TOP + index, 0, [code, name, price]) as [Spot, Spot, Spot];
  });
  return { items: rows.map(([, item]) => item), prices: rows.map(([, , price]) => price) };
}

interface Money {
  readonly prices: readonly Spot[];
  readonly bowl: Spot;
  readonly row: number;
}

/** What a batch costs, how many bowls it fills and what each of them costs. */
function money(sheet: CorpusSheet, { total }: MarkedRecipe, { prices, bowl, row }: Money): void {
  const { column } = total!;
  const grams = span(prices.map((spot) => ({ ...spot, column })));
  const sum = `=SUMPRODUCT(${absolute(span(prices))},${grams})/1000`;
  const cost = put(sheet, row, column, shown(sum, "0.00"));
  const bowls = put(sheet, row + 1, column, shown(`=${a1(total!)}/${fixed(bowl)}`, "0.0"));
  put(sheet, row + 2, column, shown(`=${a1(cost)}/${a1(bowls)}`, "0.00"));
}

const WORDS = ["Batch costs (£)", "Bowls from it", "A bowl costs (£)"];

/** Five ices across, what they cost and what they do under each. */
function buffet(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Ices for buffets");
  put(sheet, 0, 0, "What goes into each ice, and what a guest's bowl of it costs");
  const bowl = given(kit, sheet, [1, 1], ["One bowl", "g", random.pick([60, 75, 80])]);
  const mades = kit.make(5).map((made) => called(upTo(made, 2000), { sugar: "caster sugar" }));
  const { items, prices } = leftSide(kit, sheet, mades);
  const amountLabel = put(sheet, TOP - 2, 3, "grams for one batch");
  const end = TOP + items.length;
  put(sheet, end, 1, "Batch weighs");
  WORDS.forEach((words, index) => put(sheet, end + 2 + index, 1, words));
  const row = end + 6;
  putRow(sheet, row + FACTS.length, 1, ["Served as"]);
  putRow(sheet, row + FACTS.length + 1, 1, ["Card by the dish"]);
  const cabinet = put(sheet, row + FACTS.length + 2, 1, "In the cool box on arrival (°C)");
  const spots = mades.map((made, index) => {
    const column = 3 + index;
    put(sheet, TOP - 1, column, made.title);
    const plan = { items, left: 3, unit: "g", format: "0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    money(sheet, recipe, { prices, bowl, row: end + 2 });
    factsDown(sheet, recipe, FACTS, { row, column, labels: 1, items });
    nameTarget(sheet, recipe, { row: row + FACTS.length, column });
    tellIn(sheet, recipe, { row: row + FACTS.length + 1, column }, VOICE);
    return put(sheet, cabinet.row, column, shown(-random.whole(24, 36) / 2, "0.0"));
  });
  marked.numberColumns.push({ spots, heading: cabinet, total: null, kind: "temperature" });
  note(kit, sheet, cabinet.row + 2, 1, "Prices from the cash and carry, before VAT.");
}

/** A caterer's ices for buffets. */
export const buffets: readonly Layout[] = [
  { name: "buffet caterer, ices across and a bowl's cost", language: "en", build: buffet },
];
