import { a1, addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { perKilogram } from "../kitchens/hand";
import { sumOf, say, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { readings, weighed } from "./words";

const VOICE: Voice = {
  lead: "Vorlesen! Enthält",
  honey: "Vorlesen! Honig, nicht für Kinder im ersten Lebensjahr (unter 12 Monaten).",
  alcohol: "Vorlesen! Alkohol: nichts für Kinder, Schwangere und wer noch Auto fährt.",
  nuts: "Vorlesen! Ganze Nüsse: Kinder unter 5 Jahren können daran ersticken.",
  egg: "Vorlesen! Rohes Eigelb: auf 71 °C erwärmen oder pasteurisiertes nehmen.",
};

const SAID: readonly Said[] = [
  { label: "wird fest ab (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser aus allem (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Gelöstes (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Eis in der Masse bei −8 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -8, decimals: 0 },
  },
];

/** Ein Rezept mit der Menge für einen Tisch und für alle. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, tables: Spot): void {
  put(sheet, 4, column, made.title);
  const { recipe, heads, amounts, end } = weighed(
    kit,
    sheet,
    made,
    { row: 5, column },
    {
      heads: ["Man nehme", "ein Tisch (g)", "alle (g)"],
      cells: (name, grams) => [name, grams],
      ...{ name: 0, amount: 1, unit: "g", total: "macht", also: 2 },
    },
  );
  const all = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [tables] },
    content: (spot) => `=${a1(spot)}*${fixed(tables)}`,
  });
  sumOf(kit, sheet, { row: end, column: column + 2 }, all, "0");
  const said = [...SAID, ...ofAlcohol(made, "reiner Alkohol darin (g)")];
  const next = say(sheet, recipe, { row: 14, column }, said);
  nameTarget(sheet, recipe, { row: next, column, label: "gedacht als" });
  tellIn(sheet, recipe, { row: 21, column }, VOICE);
}

const STEPS = [
  ["18:00", "Begrüßung, Schürzen"],
  ["18:15", "Abwiegen, auflösen"],
  ["18:45", "flache Schalen in den Froster"],
  ["19:15", "durchrühren, 1. Mal"],
  ["19:45", "durchrühren, 2. Mal"],
  ["20:15", "Verkosten, Zettel austeilen"],
];

/** Der Ablauf mit dem, was das Thermometer in der Schale zeigte. */
function evening(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ablauf");
  put(sheet, 0, 0, "Ablauf des Abends");
  const heads = putRow(sheet, 2, 0, ["Uhr", "Was", "Froster (°C)", "Wer spült"]);
  STEPS.forEach((cells, index) => {
    putRow(sheet, 3 + index, 0, cells);
    put(sheet, 3 + index, 3, ["Tisch 1", "Tisch 2", "Tisch 3"][index % 3]);
  });
  readings(
    kit,
    sheet,
    heads[2]!,
    STEPS.map(() => -kit.random.whole(19, 23)),
  );
  put(sheet, 10, 0, "Teilnehmerliste liegt im Sekretariat.");
}

/** Ein Kursabend: zwei Rezepte nebeneinander, Mengen für die Tische, Ablauf. */
function kursabend(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Zettel");
  put(sheet, 0, 0, "Kursabend Gefrorenes, Zettel für die Tische");
  const words = {
    label: "Tische besetzt (Anzahl)",
    bare: "Tische besetzt",
    value: kit.random.whole(3, 5),
  };
  const tables = input(kit, sheet, { row: 2, column: 0 }, words);
  const mades = kit.make(2).map(perKilogram);
  mades.forEach((made, index) => block(kit, sheet, made, 5 * index, tables));
  note(kit, sheet, 23, 0, "Schneebesen mitbringen lassen, im Haus sind nur zwei.");
  evening(kit);
}

/** Zettel eines Abendkurses. */
export const kursabende: readonly Layout[] = [
  {
    name: "Kursabend, zwei Rezepte nebeneinander für alle Tische",
    language: "de",
    build: kursabend,
  },
];
