import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf, labelOf, temperatures, upTo } from "./words";

const BEFORE = ["Flavour", "Freezes at (°C)", "Sugars g / 100 g water", "Ice % of mix at −15 °C"];
const AFTER = ["Total g", "Cups", "Freezer at closing (°C)", "Style", "Label"];

const PLANS: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula", format: "0.0" },
  { states: "sugar per 100 g water", as: "formula", format: "0" },
  { states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
];

interface Table {
  readonly items: readonly string[];
  readonly heads: readonly Spot[];
  readonly title: Spot;
  readonly cup: Spot;
}

/** A flavour along its row; gives its cups and the freezer's reading. */
function flavour(kit: Kit, made: MadeRecipe, row: number, table: Table): readonly Spot[] {
  const { items, heads, title, cup } = table;
  const sheet = kit.marked.book.sheets[0]!;
  const left = BEFORE.length;
  const end = left + items.length;
  put(sheet, row, 0, made.title);
  const at = made.names.map((name) => left + items.indexOf(name));
  const amounts = at.map((column, index) => put(sheet, row, column, made.grams[index]));
  const all = items.map((_, item) => ({ sheet: sheet.name, row, column: left + item }));
  const total = sumOf(kit, sheet, { row, column: end }, all);
  const cups = put(sheet, row, end + 1, shown(`=${a1(total)}/${fixed(cup)}`, "0"));
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((column) => heads[column]!), amounts, unit: "g", amountLabel: title, total },
    shared: true,
  });
  const lines = `${absolute(span(heads.slice(left, end)))},${span(all)}`;
  PLANS.forEach((plan, index) =>
    resultAt(sheet, recipe, heads[1 + index]!, { row, column: 1 + index }, plan, () => lines),
  );
  nameTarget(sheet, recipe, { row, column: end + 3 });
  const words = labelOf(made, "Contains");
  if (words !== "") recipe.flags.push(put(sheet, row, end + 4, words));
  const closing = put(sheet, row, end + 2, shown(-kit.random.whole(31, 40) / 2, "0.0"));
  return [cups, closing];
}

/** A line for each flavour, what it gives before what goes in. */
function kiosk(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "This summer");
  const title = put(sheet, 0, 0, "Beach kiosk, what went into each batch in grams");
  const words = { label: "Cup (g)", bare: "Cup", value: random.pick([90, 110, 120]) };
  const cup = input(kit, sheet, { row: 1, column: 0 }, words);
  const mades = kit.make(5).map((made) => upTo(made, 3000));
  const items = itemsOf(mades);
  const heads = putRow(sheet, 3, 0, [...BEFORE, ...items, ...AFTER]);
  const table = { items, heads, title, cup };
  const rows = mades.map((made, index) => flavour(kit, made, 4 + index, table));
  const end = BEFORE.length + items.length;
  marked.formulaColumns.push({
    ...{ spots: columnOf(rows, 0), heading: heads[end + 1]!, fixed: [cup] },
  });
  temperatures(kit, heads[end + 2]!, columnOf(rows, 1));
  put(sheet, 9, end - 1, "all flavours");
  const totals = rows.map((_, index) => ({ sheet: sheet.name, row: 4 + index, column: end }));
  sumOf(kit, sheet, { row: 9, column: end }, totals);
  note(kit, sheet, 11, 0, "Empty cell: nothing of it in that flavour.");
}

/** A kiosk by the sea. */
export const kiosks: readonly Layout[] = [
  { name: "beach kiosk, a line a flavour, answers first", language: "en", build: kiosk },
];
