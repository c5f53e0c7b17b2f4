import { addSheet, put, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { costsBeside, pricesOf, readings } from "./words";

const VOICE: Voice = {
  lead: "Chalk up:",
  honey: "honey, nothing for babies under 12 months.",
  alcohol: "has alcohol, adults only, not for expectant mums or drivers.",
  nuts: "whole nuts, under-fives may choke.",
  egg: "raw egg yolk, so heat to 71 °C (or pasteurised yolks).",
};

const WORDS = {
  ...{ honey: "runny honey", strawberries: "strawberries, frozen", blueberries: "blueberries" },
  ...{ "skim milk powder": "dried skimmed milk", "cocoa powder": "cocoa", water: "water, cold" },
};

const SAID: readonly Said[] = [
  { label: "freezing point °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "water g", states: "water", as: "typed", decimals: 0 },
  { label: "dissolved g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "% of water frozen at −12 °C",
    ...{ states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  },
  {
    label: "% ice in the mix at −12 °C",
    ...{ states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** One leaf of the binder; gives the row of the next. */
function leaf(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): number {
  put(sheet, row, 0, made.title.toUpperCase());
  const prices = pricesOf(kit, made);
  const list = listed(
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["for a kilo", undefined, "of", "€/kg", "€"],
      cells: (name, grams, index) => [grams, "g", name, prices[index]],
      ...{ name: 2, amount: 0 },
    },
  );
  const { names, amounts, heads, end } = list;
  const costs = costsBeside(kit, sheet, heads[4]!, amounts, { column: 3 });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "g");
  put(sheet, end, 2, "altogether");
  sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const unitCells = columnOf(list.rows, 1);
  const lines = { names, amounts, unitCells, total, unit: "g", amountLabel: heads[0]! } as const;
  const recipe = markRecipe(kit, made, lines);
  strip(sheet, recipe, { row: end + 2, column: 0 }, [...SAID, ...ofAlcohol(made, "alcohol g")]);
  nameTarget(sheet, recipe, { row: end + 5, column: 0, label: "want it" });
  return Math.max(end + 6, tellIn(sheet, recipe, { row: end + 6, column: 0 }, VOICE)) + 2;
}

/** Three ices one below the other, two freezers' readings at the right of the first. */
function farmCafe(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "binder");
  const mades = kit.make(3).map((made) => called(perKilogram(made), WORDS));
  put(sheet, 0, 0, "Ices, copied out of the ring binder. Dairy from our own cows.");
  let row = 2;
  for (const made of mades) row = leaf(kit, sheet, made, row);
  const heads: [string, ...string[]] = ["Freezers, 8 a.m.", "café °C", "barn °C"];
  const when = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];
  const ranges = [[-18, -13] as const, [-23, -19] as const];
  const next = readings(kit, sheet, { row: 3, column: 8 }, { heads, when, ranges });
  note(kit, sheet, next + 1, 8, "Barn freezer ices up, defrost every second month.");
  put(sheet, next + 3, 8, "Kettle of mix takes");
  put(sheet, next + 3, 9, shown(12, "0"));
  put(sheet, next + 3, 10, "litres at most");
}

/** A café on a farm. */
export const farmCafes: readonly Layout[] = [
  { name: "farm café, three leaves of a ring binder", language: "en", build: farmCafe },
];
