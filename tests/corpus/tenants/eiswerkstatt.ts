import { a1, addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofSpirit, perKilo, tellInRows, timesTo } from "./words";

const HEADS = ["Lfd. Nr.", "Rohware", "Einsatz kg", "Preis EUR/kg", "Betrag EUR"];

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierpunkt °C", states: "freezing point", as: "typed", decimals: 2 },
  { label: "Wasser g", states: "water", as: "typed", decimals: 0 },
  { label: "Gelöste Stoffe g", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Zucker % der Masse", states: "sugar share", as: "typed" },
  {
    ...{ label: "Eis % der Masse bei −15 °C", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -15 },
  },
  ...ofSpirit(made, { label: "Alkohol g" }),
];

/** The lines of a batch, their sums and what they cost. */
function costed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): MarkedRecipe {
  const place = { row, column: 0 };
  const { heads, rows, names, amounts, end } = listed(sheet, made, place, {
    heads: HEADS,
    cells: (name, grams, index) => [
      ...[index + 1, name, inUnit(grams, "kg"), perKilo(kit.random, made.lines[index]!.en)],
    ],
    ...{ name: 1, amount: 2 },
  });
  const costs = rows.map(([, , kilos, price]) =>
    put(sheet, kilos!.row, 4, `=ROUND(${a1(kilos!)}*${a1(price!)},2)`),
  );
  const summed = (column: number, parts: readonly Spot[], decimals: number): Spot =>
    put(sheet, end, column, `=ROUND(SUM(${span(parts)}),${decimals})`);
  put(sheet, end, 1, "Summe");
  const total = summed(2, amounts, 3);
  summed(4, costs, 2);
  const amountLabel = heads[2]!;
  return markRecipe(kit, made, { names, amounts, total, unit: "kg", amountLabel });
}

/** One batch of the file; gives the row for the next. */
function batch(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  putRow(sheet, top, 0, ["Ansatz", made.title]);
  const recipe = costed(kit, sheet, made, top + 1);
  const next = say(sheet, recipe, { row: recipe.total!.row + 1, column: 1 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Soll werden" });
  return tellInRows(sheet, recipe, { row: next + 1, column: 1 }, "Allergene") + 1;
}

const DAYS = ["Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag"];

/** What the cold store's display read. */
function coldStore(kit: Kit, sheet: CorpusSheet, top: number): number {
  const heads = putRow(sheet, top, 0, ["Tag", "Kühlzelle morgens °C", "Kühlzelle abends °C"]);
  const read = () => -kit.random.whole(165, 215) / 10;
  const rows = DAYS.map((day, index) => putRow(sheet, top + 1 + index, 0, [day, read(), read()]));
  [1, 2].forEach((at) =>
    kit.marked.numberColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[at]!, total: null, kind: "temperature" },
    }),
  );
  return top + 2 + rows.length;
}

/** The week's batches as a file with decimal commas. */
function eiswerkstatt(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ansätze");
  putRow(sheet, 0, 0, ["Eiswerkstatt", "Ansätze der Woche"]);
  let top = 2;
  for (const made of kit.make(3)) {
    top = batch(kit, sheet, called(timesTo(made, 6000), { Zucker: "Kristallzucker" }), top);
  }
  top = coldStore(kit, sheet, top);
  note(kit, sheet, top, 0, "Stand Freitag abends");
}

/** A small workshop that makes ice. */
export const eiswerkstaetten: readonly Layout[] = [
  {
    ...{ name: "Eiswerkstatt, Ansätze der Woche als Datei", language: "de" },
    ...{ isCsv: true, build: eiswerkstatt },
  },
];
