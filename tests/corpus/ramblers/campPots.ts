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
import { perKilogram } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { isAlcoholic, itemsOf, madeOf } from "../strollers/words";
import { wordsBy, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Tell the counsellors:",
  honey: "honey, not for a visiting baby under 12 months",
  alcohol: "alcohol, staff night only, adults not pregnant and not driving",
  nuts: "whole nuts, not for kids under 5, choking",
  egg: "raw yolk, cook it to 71 °C or use pasteurised",
};

const TOP = 5;
const BELOW = [
  ...["Pot", "Freezing point, °C", "Water in it, g", "Dissolved in it, g"],
  ...["Sugars, % of the mix", "Ice in the walk-in, % of the mix", "Want it", "Shout at the hatch"],
];
const PLANS: readonly ResultPlan[] = [
  { states: "freezing point", as: "typed", decimals: 1 },
  { states: "water", as: "typed", decimals: 0 },
  { states: "dissolved", as: "formula", format: "0" },
  { states: "sugar share", as: "typed", decimals: 0 },
];

interface Chart {
  readonly names: readonly Spot[];
  readonly items: readonly string[];
  readonly labels: readonly Spot[];
  readonly batches: Spot;
  readonly walkIn: Spot;
  readonly temperatureC: number;
}

/** What is said of a pot under its column. */
function below(sheet: CorpusSheet, recipe: MarkedRecipe, all: readonly Spot[], chart: Chart) {
  const { names, labels, walkIn: temperature, temperatureC } = chart;
  const ice = { states: "ice of mix", as: "formula", format: "0" } as const;
  const plans: readonly ResultPlan[] = [...PLANS, { ...ice, temperature, temperatureC }];
  const { column } = all[0]!;
  const lines = `${absolute(span(names))},${span(all)}`;
  plans.forEach((plan, index) => {
    const label = labels[1 + index]!;
    resultAt(sheet, recipe, label, { row: label.row, column }, plan, () => lines);
  });
  nameTarget(sheet, recipe, { row: labels[6]!.row, column });
  const words = wordsBy(recipe.made, VOICE);
  if (words !== "") recipe.flags.push(put(sheet, labels[7]!.row, column, words));
}

/** One recipe: the cook book's amounts, and beside them what the camp needs. */
function pot(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, chart: Chart): void {
  const { names, items, labels, batches } = chart;
  put(sheet, TOP - 2, column, made.title);
  const heads = putRow(sheet, TOP - 1, column, ["Small pot (g)", "Whole camp (g)"]);
  const own = made.names.map((name) => names[items.indexOf(name)]!);
  const amounts = own.map(({ row }, index) => put(sheet, row, column, made.grams[index]));
  const all = names.map((spot) => ({ ...spot, column }));
  const camp = beside(kit, heads[1]!, all, {
    ...{ sheet, format: "0", fixed: [batches] },
    content: (spot) => `=${a1(spot)}*${fixed(batches)}`,
  });
  const { row } = labels[0]!;
  const total = sumOf(kit, sheet, { row, column }, all);
  sumOf(kit, sheet, { row, column: column + 1 }, camp, "0");
  const rows = new Set(own.map((spot) => spot.row));
  const alsoAmounts = camp.filter((spot) => rows.has(spot.row));
  const recipe = markRecipe(kit, made, {
    ...{ names: own, amounts, alsoAmounts, total, unit: "g", amountLabel: heads[0]! },
    shared: true,
  });
  below(sheet, recipe, all, chart);
}

/** How many small pots the camp needs. */
function batchesFor(kit: Kit, sheet: CorpusSheet) {
  const { random } = kit;
  const [, heads] = putRow(sheet, 1, 0, ["Kids and staff", random.whole(36, 90)]);
  const [, feeds] = putRow(sheet, 1, 3, ["A small pot feeds", random.pick([8, 10, 12])]);
  const [, batches] = putRow(sheet, 2, 0, [
    ...["Small pots needed", shown(`=${a1(heads!)}/${a1(feeds!)}`, "0.0")],
  ]);
  const words = { label: "Walk-in freezer (°C)", bare: "Walk-in freezer" };
  const temperatureC = -random.whole(14, 19);
  const walkIn = input(kit, sheet, { row: 2, column: 3 }, { ...words, value: temperatureC });
  return { batches: batches!, walkIn, temperatureC };
}

/** Three pots in columns, each scaled to the heads counted at breakfast. */
function campPots(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sunday treat");
  put(sheet, 0, 0, "Sunday treat, three pots to choose from");
  const heads = batchesFor(kit, sheet);
  const mades = madeOf(kit, 3, (made) => !isAlcoholic(made)).map(perKilogram);
  const items = itemsOf(mades);
  put(sheet, TOP - 1, 0, "From the store room");
  const names = items.map((item, index) => put(sheet, TOP + index, 0, item));
  const end = TOP + items.length;
  const labels = BELOW.map((label, index) => put(sheet, end + index, 0, label));
  const chart = { names, items, labels, ...heads };
  mades.forEach((made, index) => pot(kit, sheet, made, 1 + 2 * index, chart));
  note(kit, sheet, end + 9, 0, "Kids on the allergy list get fruit pops from the other box.");
}

/** A camp cook's pots. */
export const camps: readonly Layout[] = [
  { name: "summer camp, pots scaled to the heads", language: "en", build: campPots },
];
