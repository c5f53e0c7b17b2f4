import { a1, addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { SHOP } from "./voices";
import { table } from "./words";

const ANSWERS: readonly Said[] = [
  { label: "Freezing pt, °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Dissolved, g per kg of mix", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Water frozen at −15 °C, % of water",
    ...{ states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** A mix for a kilogram, and for today beside it; gives the next free row. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, kilos: Spot): number {
  put(sheet, 3, column, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column },
    {
      heads: [undefined, "1 kg (g)", "Today (g)"],
      cells: (item, grams) => [item, grams],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [kilos] },
    content: (spot) => `=${a1(spot)}*${fixed(kilos)}`,
  });
  put(sheet, end, column, "Sum");
  const total = sumOf(kit, sheet, { row: end, column: column + 1 }, amounts);
  sumOf(kit, sheet, { row: end, column: column + 2 }, alsoAmounts, "0");
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  const next = say(sheet, recipe, { row: 14, column }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column, label: "Meant for" });
  tellIn(sheet, recipe, { row: next + 1, column }, SHOP);
  return next + 3;
}

const ORDERS = [
  ["Orders", "Collect", "Litres"],
  ["school fair", "Saturday 10 am", 6],
  ["wedding, barn", "Saturday 3 pm", 9],
  ["corner shop", "Monday", 4],
];

/** The week's two mixes beside each other, orders under them. */
function twoMixes(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "This week");
  put(sheet, 0, 0, "This week's two");
  const kilos = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{ label: "How much of each (kg)", bare: "How much of each" },
      value: kit.random.pick([2, 3, 4, 5]),
    },
  );
  const words = { sugar: "white sugar", "whole milk": "milk 3.5 % fat" };
  const ends = kit
    .make(2)
    .map((made, index) => mix(kit, sheet, called(perKilogram(made), words), 4 * index, kilos));
  const row = Math.max(...ends);
  table(sheet, { row, column: 0 }, ORDERS);
  putRow(sheet, row, 4, ["To buy", "How many"]);
  putRow(sheet, row + 1, 4, ["1-litre tubs", 20]);
  putRow(sheet, row + 2, 4, ["labels, roll", 1]);
  putRow(sheet, row + 3, 4, ["freezer tape", 2]);
  note(kit, sheet, row + 5, 0, "Machine takes 1.5 kg at most, so do it in goes.");
}

/** Somebody who sells from the kitchen door. */
export const twoMixesSheets: readonly Layout[] = [
  {
    name: "kitchen-door seller, this week's two mixes side by side",
    language: "en",
    build: twoMixes,
  },
];
