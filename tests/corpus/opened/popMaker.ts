import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { declare, down, readings, type Voice } from "./own";

const VOICE: Voice = {
  lead: "On the bag: contains",
  honey: "Honey, unsuitable for babies under 12 months.",
  alcohol: "Contains alcohol, over-18s, not for pregnant women or drivers.",
  nuts: "Whole nuts, choking hazard, keep from children under 5.",
  egg: "Raw egg yolk, mix must reach 71 °C unless the yolk is pasteurised.",
};

const answers: readonly Said[] = [
  { label: "Mix begins to freeze (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Depression (K)", states: "depression", as: "formula" },
  { label: "Water, g in 100 g of mix", states: "water", as: "typed", decimals: 1 },
  { label: "Dissolved, g in 100 g of mix", states: "dissolved", as: "typed", decimals: 1 },
  {
    label: "Ice in the whole pop at −18 °C",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, percent: "format" },
  },
];

/** What the moulds take; gives the cell with the grams to make. */
function moulds(kit: Kit, sheet: CorpusSheet): Spot {
  const { random } = kit;
  const at = (row: number, label: string, bare: string, value: number) =>
    input(kit, sheet, { row, column: 0 }, { label, bare, value });
  const one = at(2, "One cavity takes (g)", "One cavity takes", random.pick([68, 72, 78]));
  const trays = putRow(sheet, 3, 0, ["Trays of 26", random.whole(1, 4)])[1]!;
  const spare = at(4, "Spare, drips and jug (%)", "Spare, drips and jug", random.pick([3, 5]));
  const formula = `=${a1(one)}*26*${a1(trays)}*(1+${a1(spare)}/100)`;
  return putRow(sheet, 5, 0, ["To make (g)", shown(formula, "0")])[1]!;
}

/** Shares, and what they come to for these trays. */
function shares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, toMake: Spot): MarkedRecipe {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 7, column: 0 },
    {
      heads: ["Ingredient", "Share of the mix", "Weigh out (g)", "Ticked"],
      cells: (name, grams) => [name, shown(inUnit(grams, "fraction"), "0.0%")],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [toMake] },
    content: (spot) => `=${a1(spot)}*${fixed(toMake)}`,
  });
  put(sheet, end, 0, "Mix");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0%");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const amountLabel = heads[1]!;
  const lines = { names, amounts, total, amountLabel, alsoAmounts, unit: "fraction" } as const;
  return markRecipe(kit, made, lines);
}

const REMARKS = ["stuck, warm water 10 s", "clean", "two broken sticks", "frost on top", "clean"];

/** Every batch that went into the freezer. */
function log(kit: Kit, title: string): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Batch log");
  put(sheet, 0, 0, `${title}, what came out`);
  const heads = putRow(sheet, 2, 0, [
    ...["Batch", "Made", "Poured at (°C)", "Freezer (°C)", "Hours till hard"],
    ...["Bite, 1 soft to 5 stone", "Came out"],
  ]);
  const count = 7;
  const batches = Array.from({ length: count }, (_, index) => index);
  down(
    sheet,
    { row: 3, column: 0 },
    batches.map((index) => `B${index + 11}`),
  );
  down(
    sheet,
    { row: 3, column: 1 },
    batches.map((index) => `${3 * index + 2} June`),
  );
  readings(kit, sheet, heads[2]!, [count, 3, 7]);
  readings(kit, sheet, heads[3]!, [count, -23, -18]);
  down(
    sheet,
    { row: 3, column: 4 },
    batches.map(() => shown(random.whole(8, 14) / 2, "0.0")),
  );
  down(
    sheet,
    { row: 3, column: 5 },
    batches.map(() => random.whole(2, 4)),
  );
  down(
    sheet,
    { row: 3, column: 6 },
    batches.map(() => random.pick(REMARKS)),
  );
}

/** Somebody who sells pops from a cargo bike's workshop: shares, trays, batches. */
function popMaker(kit: Kit): void {
  const made = largestFirst(kit.make(1)[0]!);
  const sheet = addSheet(kit.marked.book, "Pop mix");
  put(sheet, 0, 0, made.title);
  const toMake = moulds(kit, sheet);
  const recipe = shares(kit, sheet, made, toMake);
  const next = say(sheet, recipe, { row: 2, column: 5 }, answers);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Wanted" });
  const last = declare(sheet, recipe, { row: recipe.total!.row + 2, column: 0 }, VOICE);
  note(kit, sheet, last + 1, 0, "Sticks in after 50 minutes.");
  log(kit, made.title);
}

export const popMakers: readonly Layout[] = [
  { name: "pop maker, shares to the trays and a batch log", language: "en", build: popMaker },
];
