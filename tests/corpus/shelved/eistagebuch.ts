import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { putList } from "./lists";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "Achtung Gäste:",
  honey: "Honig, also nichts für Babys unter 12 Monaten!",
  alcohol: "Alkohol, also nichts für Kinder, Schwangere und wer fährt!",
  nuts: "ganze Nüsse, Erstickungsgefahr bei Kindern unter 5!",
  egg: "rohes Eigelb, vorher auf 71 °C erhitzen oder pasteurisiertes nehmen!",
};

const SAID: readonly Said[] = [
  { label: "fängt an zu gefrieren bei (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "also unter Wasser um (K)", states: "depression", as: "formula", format: "0.0" },
  {
    label: "Eis in der Masse bei −18 °C (%)",
    states: "ice of mix",
    as: "typed",
    temperatureC: -18,
    decimals: 0,
  },
  { label: "Gelöstes insgesamt (g)", states: "dissolved", as: "typed", decimals: 0 },
];

const THOUGHTS = [
  "Schöner Abend auf der Terrasse.",
  "Rührschüssel lag nur zehn Stunden im Frost, zu kurz.",
  "Nachbarn kamen dazu, Schüssel leer.",
  "Neue Maschine ausprobiert, sie ist lauter als gedacht.",
];

const DATES = ["3. Mai", "17. Mai", "8. Juni", "29. Juni"];

/** A day of the diary: the date, what went in, thoughts at the right. */
function entry(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  [at, row]: readonly [number, number],
) {
  putRow(sheet, row, 0, [DATES[at], made.title]);
  const list = putList(sheet, made, {
    ...{ row: row + 1, column: 1, name: 0, amount: 1 },
    cells: (item, grams) => [item, shown(grams, '0 "g"')],
  });
  const { names, amounts, end } = list;
  put(sheet, end, 1, "macht");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, '0 "g"');
  const recipe = markRecipe(kit, made, { names, amounts, total, unit: "g" });
  note(kit, sheet, row + 1, 4, THOUGHTS[at]!);
  const next = say(sheet, recipe, { row: row + 2, column: 4 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "so gewollt:" });
  tellIn(sheet, recipe, { row: next + 1, column: 4 }, VOICE);
  put(sheet, row, 4, `Note: ${kit.random.pick(["1", "1−", "2+", "2", "3"])}`);
  return Math.max(end + 2, next + 3);
}

/** A diary of ices and the freezer in the cellar. */
function eistagebuch(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "2026");
  put(sheet, 0, 0, "Eistagebuch");
  let row = 2;
  kit.make(4).forEach((made, at) => {
    row = entry(kit, sheet, called(made, { Zucker: "Haushaltszucker" }), [at, row]);
  });
  const log = addSheet(kit.marked.book, "Keller");
  const [, heading] = putRow(log, 0, 0, ["abgelesen am", "Truhe im Keller (°C)"]);
  const spots = DATES.map((date, at) => {
    const cold = shown(-kit.random.whole(175, 204) / 10, "0.0");
    return putRow(log, 1 + at, 0, [date, cold])[1]!;
  });
  readings(kit, heading!, spots);
}

/** Somebody who makes ice at home and writes it down. */
export const eistagebuecher: readonly Layout[] = [
  { name: "Hobby, Eistagebuch mit Noten", language: "de", build: eistagebuch },
];
