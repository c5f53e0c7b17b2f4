import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { formulas } from "../layouts/marking";
import { sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf } from "../strollers/words";
import { VOICES } from "./voices";
import { below, readings } from "./words";

const ANSWERS: readonly (readonly [heading: string, plan: ResultPlan])[] = [
  ["Gefrierp. °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Wasser g", { states: "water", as: "typed", decimals: 0 }],
  [
    "Wasser gefroren bei −13 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  ],
  ["Zucker % vom Mix", { states: "sugar share", as: "typed", decimals: 1 }],
];

interface Book {
  readonly sheet: CorpusSheet;
  readonly items: readonly Spot[];
  readonly amountLabel: Spot;
  readonly answers: readonly Spot[];
}

/** Eine Sorte in ihrer Zeile; gibt die Zelle ihrer Summe. */
function entry(kit: Kit, made: MadeRecipe, index: number, book: Book): Spot {
  const { sheet, items, amountLabel, answers } = book;
  const row = 4 + index;
  putRow(sheet, row, 0, [`S${index + 1}`, made.title]);
  const recipe = alongRow(kit, sheet, made, row, { items, unit: "g", format: "0", amountLabel });
  answers.forEach((label, at) => {
    const place = { row, column: label.column };
    resultAt(sheet, recipe, label, place, ANSWERS[at]![1], () => recipe.lines);
  });
  const next = answers.at(-1)!.column + 1;
  nameTarget(sheet, recipe, { row, column: next });
  tellIn(sheet, recipe, { row, column: next + 1 }, VOICES.buch);
  return recipe.total!;
}

/** Die Zeilen, darunter, was für alle zusammen gebraucht wird. */
function entries(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): readonly Spot[] {
  put(sheet, 0, 0, "Sortenbuch");
  put(sheet, 1, 0, "seit dem ersten Kurs, neue Sorten unten anfügen");
  const names = itemsOf(mades);
  putRow(sheet, 3, 0, ["Nr.", "Sorte"]);
  const amountLabel = put(sheet, 2, 2, "Gramm je Ansatz");
  const items = putRow(sheet, 3, 2, names);
  const after = 2 + names.length;
  put(sheet, 3, after, "Ansatz g");
  const words = ANSWERS.map(([heading]) => heading);
  const answers = putRow(sheet, 3, after + 1, words);
  putRow(sheet, 3, after + 1 + words.length, ["Konsistenz", "Beim Ausgeben sagen"]);
  const book = { sheet, items, amountLabel, answers };
  const totals = mades.map((made, index) => entry(kit, made, index, book));
  const end = 4 + mades.length;
  put(sheet, end, 1, "jede einmal");
  [...items, { ...items[0]!, column: after }].forEach(({ column }) => {
    const parts = mades.map((_, index) => ({ sheet: sheet.name, row: 4 + index, column }));
    sumOf(kit, sheet, { row: end, column }, parts, "0");
  });
  note(kit, sheet, end + 2, 1, "S1 nicht mehr auf Messen zeigen.");
  return totals;
}

/** Wie oft eine Sorte gemacht wurde, und wie kalt die Truhe dabei war. */
function year(
  kit: Kit,
  sheet: CorpusSheet,
  mades: readonly MadeRecipe[],
  totals: readonly Spot[],
): void {
  const { random } = kit;
  put(sheet, 0, 0, "Das Jahr in Ansätzen");
  const heads = putRow(sheet, 2, 0, ["Sorte", "Ansätze", "verbraucht (kg)", "Truhe (°C)"]);
  const rows = mades.map(({ title }, index) =>
    putRow(sheet, 3 + index, 0, [title, random.whole(2, 15)]),
  );
  const used = rows.map(([, times], index) =>
    shown(`=${a1(times!)}*Sorten!${a1(totals[index]!)}/1000`, "0.0"),
  );
  const kilos = formulas(kit, heads[2]!, used, { sheet, at: [3, 2] });
  readings(kit, sheet, heads[3]!, { count: mades.length, from: -20, to: -15 });
  const end = 3 + mades.length;
  put(sheet, end, 0, "Jahr");
  sumOf(kit, sheet, { row: end, column: 1 }, columnOf(rows, 1));
  sumOf(kit, sheet, { row: end, column: 2 }, kilos, "0.0");
  const duties = ["Januar: Inventur", "Mai: Truhe abtauen", "Oktober: Waage prüfen lassen"];
  below(sheet, { row: 2, column: 6 }, ["Vormerken", ...duties]);
}

/** Ein Buch mit einer Zeile je Sorte. */
function flavourBook(kit: Kit): void {
  const { book } = kit.marked;
  const words = { Zucker: "Kristallzucker", Vollmilch: "Milch 3,5 %", Filterkaffee: "Kaffee" };
  const mades = kit.make(5).map((made) => called(made, words));
  const totals = entries(kit, addSheet(book, "Sorten"), mades);
  year(kit, addSheet(book, "Jahr"), mades, totals);
}

/** Das Sortenbuch einer Kursleiterin. */
export const sortenbuecher: readonly Layout[] = [
  { name: "Kursleiterin, Sortenbuch mit Jahresblatt", language: "de", build: flavourBook },
];
