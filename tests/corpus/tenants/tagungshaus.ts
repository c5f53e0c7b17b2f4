import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofSpirit, readings, tellOnce, timesTo } from "./words";

const DAYS = ["Mo", "Di", "Mi", "Do", "Fr"];

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Zuckeranteil an der Masse", inCell: "%", states: "sugar share", as: "typed" },
  {
    ...{ label: "Eis in der Masse bei −16 °C", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
  },
  ...ofSpirit(made, { label: "Alkohol", inCell: "g" }),
];

/** The day's recipe under the others; gives the row for the next. */
function recipeOf(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  put(sheet, top, 0, made.title);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Was", "Wie viel", "Einheit"],
      cells: (name, grams) => [name, shown(inUnit(grams, "kg"), "0.000"), "kg"],
    },
  );
  putRow(sheet, end, 0, ["Gesamt", undefined, "kg"]);
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  const unitCells = columnOf(rows, 2);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, total, unitCells, amountLabel: heads[1]!, unit: "kg" },
  });
  const next = say(sheet, recipe, { row: top + 1, column: 4 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Wird serviert als" });
  const told = tellOnce(sheet, recipe, { row: next + 1, column: 4 }, "Enthält:");
  return Math.max(end, told) + 2;
}

const HEADS = [
  ...["Tag", "Nachtisch", "Gäste", "Portion (g)", "Bedarf (kg)", "Truhe um 8 Uhr (°C)"],
];

/** Who eats what on which day. */
function week(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): void {
  const { random } = kit;
  put(sheet, 0, 0, "Tagungshaus, Eis zum Nachtisch");
  const heads = putRow(sheet, 2, 0, HEADS);
  const rows = mades.map(({ title }, index) => {
    const guests = random.whole(28, 62);
    return putRow(sheet, 3 + index, 0, [DAYS[index], title, guests, random.pick([70, 80, 90])]);
  });
  const needed: Spot[] = beside(kit, heads[4]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (guests, index) => `=${a1(guests)}*${a1(rows[index]![3]!)}/1000`,
  });
  const chest = needed.map(({ row }) =>
    put(sheet, row, 5, shown(-random.whole(155, 210) / 10, "0.0")),
  );
  readings(kit, heads[5]!, chest);
  const row = 3 + rows.length;
  put(sheet, row, 1, "Woche gesamt");
  sumOf(kit, sheet, { row, column: 2 }, columnOf(rows, 2));
  sumOf(kit, sheet, { row, column: 4 }, needed, "0.00");
  note(kit, sheet, row + 2, 0, "Mittwoch kommt die Abendrunde eine Stunde später.");
}

/** A week of desserts and the recipes behind them. */
function tagungshaus(kit: Kit): void {
  const { marked } = kit;
  const mades = kit.make(5).map((made) => called(timesTo(made, 8000), { Salz: "Speisesalz" }));
  week(kit, addSheet(marked.book, "Wochenplan"), mades);
  const sheet = addSheet(marked.book, "Rezepte dazu");
  let top = 0;
  for (const made of mades) top = recipeOf(kit, sheet, made, top);
}

/** The kitchen of a conference house. */
export const tagungshaeuser: readonly Layout[] = [
  { name: "Tagungshaus, Nachtischwoche mit Rezepten", language: "de", build: tagungshaus },
];
