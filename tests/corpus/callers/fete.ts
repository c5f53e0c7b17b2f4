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
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { columnOf } from "../kitchens/hand";
import { eaterWords } from "./desk";

const TOP = 4;

const UNDER = [
  ...[
    "One batch weighs",
    "Lollies from it",
    "Begins to freeze (°C)",
    "Freezing point lowered by (K)",
  ],
  ...["Water in the batch (g)", "Sugars for every 100 g of water (g)"],
  ...["Water turned to ice in the chest at −18 °C (%)", "Should be", "Write on the sign"],
];

const TOLD: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula" },
  { states: "depression", as: "formula" },
  { states: "water", as: "typed", decimals: 0 },
  { states: "sugar per 100 g water", as: "typed", decimals: 1 },
  { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
];

interface Chart {
  readonly names: readonly Spot[];
  readonly items: readonly string[];
  readonly labels: readonly Spot[];
  readonly title: Spot;
  readonly mould: Spot;
}

/** One flavour down its column, what is known of it below. */
function flavour(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, chart: Chart) {
  const { names, items, labels, title, mould } = chart;
  put(sheet, TOP, column, made.title);
  const own = made.names.map((name) => names[items.indexOf(name)]!);
  const amounts = own.map(({ row }, index) => put(sheet, row, column, made.grams[index]));
  const all = names.map(({ row }) => ({ sheet: sheet.name, row, column }));
  const total = sumOf(kit, sheet, { row: labels[0]!.row, column }, all);
  put(sheet, labels[1]!.row, column, shown(`=${a1(total)}/${fixed(mould)}`, "0"));
  const recipe = markRecipe(kit, made, {
    ...{ names: own, amounts, total, amountLabel: title, unit: "g", shared: true },
  });
  const lines = `${absolute(span(names))},${span(all)}`;
  TOLD.forEach((plan, index) => {
    const label = labels[2 + index]!;
    resultAt(sheet, recipe, label, { row: label.row, column }, plan, () => lines);
  });
  nameTarget(sheet, recipe, { row: labels[7]!.row, column });
  const words = eaterWords(made, "There is");
  if (words !== "") recipe.flags.push(put(sheet, labels[8]!.row, column, words));
  return all;
}

/** What all flavours need of each thing, what is there and what to buy. */
function shoppingList(kit: Kit, sheet: CorpusSheet, chart: Chart, left: number): void {
  const { names } = chart;
  const heads = putRow(sheet, TOP, left, ["Need (g)", "Have already (g)", "Buy (g)"]);
  const rows = names.map(({ row }, index) => {
    const line = [1, 2, 3, 4].map((column) => ({ sheet: sheet.name, row, column }));
    const need = sumOf(kit, sheet, { row, column: left }, line);
    const isWater = chart.items[index] === "water";
    const have = put(sheet, row, left + 1, isWater ? 5000 : 25 * kit.random.whole(0, 20));
    const buy = put(sheet, row, left + 2, `=MAX(0,${a1(need)}-${a1(have)})`);
    return [need, have, buy];
  });
  [0, 2].forEach((at) =>
    kit.marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[at]!, fixed: [] }),
  );
}

/** Four flavours in columns, and the shopping for all of them. */
function fete(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Lollies");
  put(sheet, 0, 0, "Summer fête, the lollies for our stand");
  const title = put(sheet, 1, 0, "Every amount in grams, for one batch");
  const words = { label: "One lolly mould takes (g)", bare: "One lolly mould takes" };
  const value = random.pick([60, 70, 85]);
  const mould = input(kit, sheet, { row: 2, column: 0 }, { ...words, value });
  const mades = kit.make(4);
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  put(sheet, TOP, 0, "What goes in");
  const names = items.map((item, index) => put(sheet, TOP + 1 + index, 0, item));
  const labels = UNDER.map((label, index) => put(sheet, TOP + 1 + items.length + index, 0, label));
  const chart = { names, items, labels, title, mould };
  mades.forEach((made, index) => flavour(kit, sheet, made, 1 + index, chart));
  shoppingList(kit, sheet, chart, 5);
  note(kit, sheet, labels.at(-1)!.row + 2, 0, "Sticks and paper sleeves are in the vestry.");
}

/** Sheets of somebody who helps at a fête. */
export const fetes: readonly Layout[] = [
  { name: "summer fête, four lollies and the shopping", language: "en", build: fete },
];
