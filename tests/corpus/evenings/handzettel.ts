import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import type { Said } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { VOICES } from "./voices";
import { below, iceOn, readings } from "./words";

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "gefriert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "unter dem von Wasser (K)", states: "depression", as: "formula" },
  { label: "Wasser in 100 g (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "Zucker im Mix (%)",
    ...{ states: "sugar share", as: "typed", decimals: 0 },
  },
  {
    label: "vom Wasser gefroren bei −18 °C",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, percent: "format" },
  },
  ...ofAlcohol(made, "Alkohol in 100 g (g)"),
];

/** Ein Handzettel: Anteile, und die Gramm für heute. */
function sheetFor(kit: Kit, made: MadeRecipe, row: number, sheet: CorpusSheet): number {
  putRow(sheet, row, 0, ["Rezept", made.title]);
  const grams = kit.random.pick([1200, 1500, 1800, 2000]);
  const words = { label: "Ansatz heute (g)", bare: "Ansatz heute", value: grams };
  const factor = input(kit, sheet, { row: row + 1, column: 0 }, words);
  const { end } = iceOn(kit, sheet, made, {
    ...{ row: row + 3, column: 0, columns: ["amount", "name", "scaled"], unit: "fraction" },
    ...{ format: "0.0%", factor, total: "Summe", right: 4, said: said(made), voice: VOICES.abend },
    headings: { amount: "Anteil", name: "Zutat", scaled: "abwiegen (g)" },
    target: "richtig, wenn",
  });
  return end + 2;
}

const EVENINGS = ["Fruchteis", "Milcheis", "Granita", "Wunschabend"];

/** Die Abende des Kurses und der Tiefkühlschrank im Kursraum. */
function dates(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Termine");
  put(sheet, 0, 0, "Eis selbst gemacht, Kursabende im Frühjahr");
  const heads = ["Abend", "Thema", "Anmeldungen", "Gefrierschrank vorher (°C)", "nachher (°C)"];
  const cells = putRow(sheet, 2, 0, heads);
  EVENINGS.forEach((topic, index) => {
    putRow(sheet, 3 + index, 0, [index + 1, topic, kit.random.whole(7, 14)]);
  });
  readings(kit, sheet, cells[3]!, { count: EVENINGS.length, from: -21, to: -18 });
  readings(kit, sheet, cells[4]!, { count: EVENINGS.length, from: -18, to: -13 });
  note(kit, sheet, 8, 0, "Schlüssel beim Hausmeister, Spülmaschine dauert 40 Minuten.");
  below(sheet, { row: 10, column: 0 }, ["Mitbringen: Schürze, Dose mit Deckel, Kühltasche"]);
}

/** Was die Teilnehmer in die Hand bekommen, zwei Rezepte auf einem Blatt. */
function courseSheets(kit: Kit): void {
  const words = { Zucker: "Haushaltszucker", Wasser: "Leitungswasser", Eigelb: "Eidotter" };
  const mades = kit.make(4).map((made) => called(largestFirst(made), words));
  for (const [index, name] of ["Abend 1", "Abend 2"].entries()) {
    const sheet = addSheet(kit.marked.book, name);
    put(sheet, 0, 0, `Handzettel, ${name}`);
    const next = sheetFor(kit, mades[2 * index]!, 2, sheet);
    const end = sheetFor(kit, mades[2 * index + 1]!, Math.max(next, 14), sheet);
    note(kit, sheet, end, 0, "Reste höchstens vier Wochen einfrieren.");
  }
  dates(kit);
}

/** Handzettel eines Abendkurses. */
export const handzettel: readonly Layout[] = [
  { name: "Eiskurs am Abend, Handzettel in Anteilen", language: "de", build: courseSheets },
];
