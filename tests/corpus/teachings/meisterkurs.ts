import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf } from "../strollers/words";
import { markFormulas, table, voice } from "./words";

const VOICE = voice(
  "A:",
  "Honig (nicht unter 12 Monaten)",
  "Alkohol (keine Kinder, keine Schwangeren, keine Fahrer)",
  "ganze Nüsse (Erstickungsgefahr unter 5 Jahren)",
  "rohes Eigelb (71 °C oder pasteurisiert)",
);

const FACTS: readonly (readonly [string, ResultPlan])[] = [
  ["GP in °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Wasser in g", { states: "water", as: "formula", format: "0" }],
  ["gelöst in g", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Eis bei −12 °C in % der Masse",
    { states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  ],
];

/** A kind in each row, its ingredients across, what is to be known of it behind. */
function kinds(kit: Kit, sheet: CorpusSheet): void {
  const own = { Zucker: "Raffinade", Wasser: "Trinkwasser" };
  const mades = kit.make(4).map((made) => called(perKilogram(made), own));
  const names = itemsOf(mades);
  put(sheet, 0, 0, "Meistervorbereitung, Praxisblock 3");
  const amountLabel = put(sheet, 1, 0, "Rezepturen je kg Mix, alle Einwaagen in g");
  const left = 2 + names.length;
  putRow(sheet, 3, 0, ["Prüfling", "Sorte", ...names, "Σ"]);
  const items = names.map((_, index): Spot => ({ sheet: sheet.name, row: 3, column: 2 + index }));
  const heads = putRow(sheet, 3, left + 1, [...FACTS.map(([words]) => words), "Soll", "Hinweis"]);
  mades.forEach((made, index) => {
    const row = 4 + index;
    putRow(sheet, row, 0, [["Ahrens", "Dogan", "Lenz", "Sommer"][index], made.title]);
    const plan = { items, unit: "g", format: "0", amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    FACTS.forEach(([, facts], at) => {
      const place = { row, column: left + 1 + at };
      resultAt(sheet, recipe, heads[at]!, place, facts, () => recipe.lines);
    });
    nameTarget(sheet, recipe, { row, column: left + 1 + FACTS.length });
    tellIn(sheet, recipe, { row, column: left + 2 + FACTS.length }, VOICE);
  });
  const end = 4 + mades.length;
  put(sheet, end, 1, "vom Lager (g)");
  for (const { column } of items) {
    const parts = mades.map((_, index): Spot => ({ sheet: sheet.name, row: 4 + index, column }));
    sumOf(kit, sheet, { row: end, column }, parts, "0");
  }
  note(kit, sheet, end + 2, 0, "Arbeitsproben bleiben bis Freitag in der Truhe von Raum 0.14.");
}

const SPIRITS: readonly (readonly [string, number])[] = [
  ["Kirschwasser", 40],
  ["Rum", 54],
  ["Orangenlikör", 40],
];

/** What is used for soaking, with its pure alcohol, and what counts how much. */
function exam(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Tränken und Flambieren (Alkohol: nicht für Kinder, Schwangere, Fahrer)");
  const heads = putRow(sheet, 2, 0, ["Spirituose", "Vol.-%", "Bedarf in g", "reiner Alkohol in g"]);
  const rows = SPIRITS.map(([name, strength], index) => {
    const [, abv, grams] = putRow(sheet, 3 + index, 0, [name, strength, random.whole(15, 60)]);
    const content = `=${a1(grams!)}*RIME.ABVTOMASSFRACTION(${a1(abv!)})`;
    const alcohol = put(sheet, 3 + index, 3, shown(content, "0.0"));
    marked.alcohols.push({ grams: grams!, abv: abv!, alcohol });
    return [grams!, alcohol];
  });
  markFormulas(kit, heads[3]!, columnOf(rows, 1));
  put(sheet, 6, 0, "zusammen");
  sumOf(kit, sheet, { row: 6, column: 2 }, columnOf(rows, 0));
  sumOf(kit, sheet, { row: 6, column: 3 }, columnOf(rows, 1), "0.0");
  const [tops, ...parts] = table(sheet, { row: 2, column: 6 }, [
    ["Prüfungsteil", "Gewicht (%)", "Dauer (min)"],
    ["Arbeitsprobe Eis", 40, 150],
    ["Schaustück", 35, 240],
    ["Fachgespräch", 25, 30],
  ]);
  put(sheet, 6, 6, "gesamt");
  const spots = columnOf(parts, 1);
  const total = sumOf(kit, sheet, { row: 6, column: 7 }, spots);
  sumOf(kit, sheet, { row: 6, column: 8 }, columnOf(parts, 2));
  marked.numberColumns.push({ spots, heading: tops![1]!, total, kind: "per cent" });
}

/** Trial pieces in rows and what the examination weighs. */
function meisterkurs(kit: Kit): void {
  kinds(kit, addSheet(kit.marked.book, "Arbeitsproben"));
  exam(kit, addSheet(kit.marked.book, "Prüfung"));
}

/** A course for confectioners who become masters. */
export const meisterkurse: readonly Layout[] = [
  {
    name: "Meistervorbereitung, Arbeitsproben in Zeilen und Prüfungsgewichte",
    ...{ language: "de", build: meisterkurs },
  },
];
