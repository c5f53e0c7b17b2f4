import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import { labelWords, perHundred, type MadeRecipe } from "../recipes";
import { beside, lines, under } from "../strangers/zeilen";
import { temperatures } from "../visitors/lines";
import { containers } from "./behaelter";

const DAYS = ["Dienstag", "Mittwoch", "Donnerstag", "Freitag", "Samstag", "Sonntag"];

/** Containers by day and kind; gives the cells with the kilograms that each kind needs. */
function plan(kit: Kit, sheet: CorpusSheet, titles: readonly string[]): Spot[] {
  const { random, marked } = kit;
  put(sheet, 0, 0, "KW 28, Behälter in der Theke (Montag Ruhetag)");
  const heads = putRow(sheet, 2, 0, [
    ...["Tag", ...titles, "Behälter am Tag", "Theke um 14 Uhr (°C)", "bemerkt"],
  ]);
  const rows = DAYS.map((day, index) => {
    const counts = titles.map(() => random.whole(1, 4) + (index > 3 ? 2 : 0));
    const [, ...cells] = putRow(sheet, 3 + index, 0, [day, ...counts]);
    return [...cells, sumOf(kit, sheet, { row: 3 + index, column: 1 + titles.length }, cells)];
  });
  const end = 1 + titles.length;
  const spots = columnOf(rows, titles.length);
  marked.formulaColumns.push({ spots, heading: heads[end]!, fixed: [] });
  temperatures(kit, sheet, { heading: heads[end + 1]!, count: DAYS.length }, [-15, -12]);
  put(sheet, 5, end + 2, "Schulfest, früher fertig sein");
  put(sheet, 9, 0, "Summe");
  const sums = rows[0]!.map((_, at) => under(kit, columnOf(rows, at)));
  return needed(kit, sheet, sums.slice(0, -1));
}

/** The kilograms that the containers take, under their sums. */
function needed(kit: Kit, sheet: CorpusSheet, sums: readonly Spot[]): Spot[] {
  const words = { label: "In einen Behälter gehen (kg)", bare: "In einen Behälter gehen" };
  const value = kit.random.pick([2.8, 3, 3.4]);
  const full = input(kit, sheet, { row: 12, column: 0 }, { ...words, value });
  put(sheet, 10, 0, "Masse ansetzen (kg)");
  return sums.map((sum) => {
    const content = shown(`=${a1(sum)}*${fixed(full)}`, "0.0");
    return put(sheet, 10, sum.column, content);
  });
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula" },
  { label: "Wasser in 100 g (g)", states: "water", as: "typed", decimals: 1 },
  { label: "Gelöstes in 100 g (g)", states: "dissolved", as: "typed", decimals: 1 },
  {
    ...{ label: "Wasser gefroren bei −13 °C", states: "ice of water", percent: "format" },
    ...{ as: "typed", temperatureC: -13 },
  },
  { label: "Zuckeranteil", states: "sugar share", percent: "format", as: "typed" },
];

interface Mixing {
  readonly left: number;
  /** The row of the answers, under the longest list. */
  readonly below: number;
  readonly need: Spot;
}

/** One mix: shares, and the kilograms of the week. */
function mixing(kit: Kit, made: MadeRecipe, { left, below, need }: Mixing): void {
  const sheet = kit.marked.book.sheets[1]!;
  put(sheet, 1, left, made.title);
  const heads = putRow(sheet, 2, left, ["Zutat", "Anteil", "diese Woche (kg)"]);
  const cells = lines(sheet, { row: 3, column: left }, made, (name, grams) => [
    ...[name, shown(inUnit(grams, "fraction"), "0.0%")],
  ]);
  const [names, amounts] = cells as [Spot[], Spot[]];
  const formula = (cell: string) => `=${cell}*Woche!${fixed(need)}`;
  const plan = { heading: heads[2]!, formula, fixed: [need], format: "0.00" };
  const alsoAmounts = beside(kit, amounts, plan);
  const total = under(kit, amounts, "0.0%");
  put(sheet, total.row, left, "Summe");
  sumOf(kit, sheet, { row: total.row, column: left + 2 }, alsoAmounts, "0.00");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "fraction", amountLabel: heads[1]!, total },
  });
  const next = say(sheet, recipe, { row: below, column: left }, SAID);
  nameTarget(sheet, recipe, { row: next, column: left, label: "Konsistenz" });
  const words = [...labelWords(made, "allergen"), ...labelWords(made, "caution")];
  if (!made.flagged || words.length === 0) return;
  put(sheet, next + 1, left, "Aushang");
  recipe.flags.push(put(sheet, next + 1, left + 1, words.join("; ")));
}

/** The week's containers, and what has to be mixed for them. */
function week(kit: Kit): void {
  const { marked } = kit;
  const mades = kit
    .make(3)
    .map((made) => called(stillMet(perHundred(made)), { Salz: "Siedesalz" }));
  const sheet = addSheet(marked.book, "Woche");
  const needs = plan(
    kit,
    sheet,
    mades.map(({ title }) => title),
  );
  put(addSheet(marked.book, "Mischungen"), 0, 0, "Mischungen der Woche");
  const below = 5 + Math.max(...mades.map(({ names }) => names.length));
  mades.forEach((made, index) =>
    mixing(kit, made, { left: 4 * index, below, need: needs[index]! }),
  );
  note(kit, sheet, 14, 0, "Was am Sonntag übrig ist, kommt am Dienstag zuerst in die Theke.");
}

/** Sheets of an ice-cream café. */
export const eiscafe: readonly Layout[] = [
  { name: "Eiscafé, Kalkulation auf den Behälter", language: "de", build: containers },
  { name: "Eiscafé, Wochenplan mit Mischungen", language: "de", build: week },
];
