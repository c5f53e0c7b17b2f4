import { a1, addSheet, fixed, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, temperatures } from "../strollers/words";
import { VOICE_OF_A_SHOP } from "./words";

const OWN = { Zucker: "Haushaltszucker", "Sahne 35 %": "Rahm 35 %", Heidelbeeren: "Blaubeeren" };

const HEADS = ["Rezeptnr.", "Position", "Stoffname", "Sollgewicht g", "Massen-%", "Toleranz g"];

const answersFor = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt in °C", states: "freezing point", as: "typed" },
  { label: "Gefrierpunktserniedrigung in K", states: "depression", as: "typed" },
  { label: "Wasser gesamt in g", states: "water", as: "typed", decimals: 0 },
  { label: "Gelöstes gesamt in g", states: "dissolved", as: "typed", decimals: 0 },
  ...ofAlcohol(made, "Alkohol (Reinmasse) in g"),
  {
    label: "Eisanteil des Wassers bei −22 °C in %",
    ...{ states: "ice of water", as: "typed", temperatureC: -22, decimals: 0 },
  },
];

/** A recipe in the file, its number in each line; gives the next free row. */
function section(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, id: string): number {
  putRow(sheet, top, 0, [id, undefined, made.title]);
  const heads = putRow(sheet, top + 1, 0, HEADS);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 0, [id, index + 1, name, made.grams[index]!]),
  );
  const [names, amounts] = [columnOf(rows, 2), columnOf(rows, 3)];
  const end = top + 2 + rows.length;
  putRow(sheet, end, 0, [id, undefined, "Summe"]);
  const total: Spot = put(sheet, end, 3, `=SUM(${span(amounts)})`);
  kit.marked.sums.push({ spot: total, parts: amounts });
  const alsoAmounts = amounts.map((spot) => {
    put(sheet, spot.row, 5, kit.random.pick([1, 2, 5]));
    return put(sheet, spot.row, 4, `=ROUND(${a1(spot)}*100/${fixed(total)},2)`);
  });
  const lines = { names, amounts, alsoAmounts, total, amountLabel: heads[3]! } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  const next = say(sheet, recipe, { row: end + 1, column: 2 }, answersFor(made));
  nameTarget(sheet, recipe, { row: next, column: 2, label: "Zielzustand" });
  return tellIn(sheet, recipe, { row: next + 1, column: 2 }, VOICE_OF_A_SHOP) + 1;
}

const PROBES = ["Fühler 1", "Fühler 2", "Fühler 3", "Fühler 4"];

/** What a dosing scale gives away: recipes, then its probes. */
function waage(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Export");
  const mades = kit.make(3).map((made) => called(made, OWN));
  const top = mades.reduce(
    (row, made, index) => section(kit, sheet, made, row, `E-0${index + 4}`),
    0,
  );
  const heads = putRow(sheet, top, 0, ["Messstelle", "Zeit", "Temperatur °C"]);
  const probes = PROBES.map((probe, index) =>
    putRow(sheet, top + 1 + index, 0, [probe, "06:30", -kit.random.whole(178, 226) / 10]),
  );
  temperatures(kit, heads[2]!, columnOf(probes, 2));
  note(kit, sheet, top + 6, 0, "Ende der Ausgabe");
}

/** A dosing scale's file. */
export const waagendateien: readonly Layout[] = [
  {
    ...{ name: "Dosierwaage, Rezepte und Fühler als Datei", language: "de" },
    ...{ isCsv: true, build: waage },
  },
];
