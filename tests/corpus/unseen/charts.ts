import { addSheet, put, putRow, span, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { called } from "../kitchens/hand";
import { resultAt, type ResultPlan } from "../results";
import { namesIn, toldIn } from "./shared";

interface Chart {
  readonly items: readonly string[];
  readonly heads: readonly Spot[];
  readonly unitHead: Spot;
}

const ASKED: readonly (readonly [label: string, unit: string, plan: ResultPlan])[] = [
  ["Begins to freeze", "°C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Water in it", "g", { states: "water", as: "formula", format: "0" }],
  ["Sugars in it", "% of the weight", { states: "sugar share", as: "typed", decimals: 0 }],
  [
    "Water frozen at −18 °C",
    "% of the water",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

/** One ice of the chart down its column, what we want of it first. */
function chartColumn(kit: Kit, made: MadeRecipe, column: number, chart: Chart): void {
  const { items, heads, unitHead } = chart;
  const sheet = kit.marked.book.sheets[0]!;
  put(sheet, 2, column, made.title);
  const at = made.names.map((name) => items.indexOf(name));
  const amounts = at.map((step, index) => put(sheet, 4 + step, column, made.grams[index]));
  const all = heads.map((spot) => ({ ...spot, column }));
  const row = 4 + items.length;
  const total = sumOf(kit, sheet, { row, column }, all);
  const names = at.map((step) => heads[step]!);
  const cells = { names, amounts, total, amountLabel: unitHead, shared: true };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  nameTarget(sheet, recipe, { row: 3, column });
  ASKED.forEach(([, , plan], step) => {
    const place = { row: row + 1 + step, column };
    const label = { sheet: sheet.name, row: place.row, column: 0 };
    resultAt(sheet, recipe, label, place, plan, () => `${absolute(span(heads))},${span(all)}`);
  });
  const told = toldIn(made);
  if (made.flagged && told !== "") recipe.flags.push(put(sheet, row + 5, column, told));
}

/** Ices of an evening class beside each other, a unit for every line. */
function chart(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Chart");
  const words = { sugar: "caster sugar", "skim milk powder": "skimmed milk powder" };
  const mades = kit.make(4).map((made) => called(made, words));
  put(sheet, 0, 0, "Evening class, week 3: which one stays soft, and why?");
  const [, unitHead] = putRow(sheet, 2, 0, ["What goes in", "Unit"]);
  put(sheet, 3, 0, "We want it");
  const items = namesIn(mades);
  const heads = items.map((item, index) => putRow(sheet, 4 + index, 0, [item, "g"])[0]!);
  const row = 4 + items.length;
  putRow(sheet, row, 0, ["Altogether", "g"]);
  ASKED.forEach(([label, unit], step) => putRow(sheet, row + 1 + step, 0, [label, unit]));
  put(sheet, row + 5, 0, "Tell people");
  const plan = { items, heads, unitHead: unitHead! };
  mades.forEach((made, index) => chartColumn(kit, made, 2 + index, plan));
  note(kit, sheet, row + 7, 0, "Let them guess first, then show the last rows.");
}

/** Several recipes in columns. */
export const charts: readonly Layout[] = [
  { name: "evening class chart, a unit for every line", language: "en", build: chart },
];
