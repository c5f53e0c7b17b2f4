import { addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { kilos } from "../layouts/marking";
import { markRecipe, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MadeRecipe } from "../recipes";
import { LADEN } from "./voices";
import { day, readings, table } from "./words";

const ANSWERS: readonly Said[] = [
  { label: "Gefrierpunkt °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Erniedrigung K", states: "depression", as: "formula" },
  {
    label: "Eis bei −18 °C, % der Masse",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
  { label: "Zucker je 100 g Wasser (g)", states: "sugar per 100 g water", as: "typed" },
];

/** A recipe along two rows, what it does under it; gives the next free row. */
function across(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): number {
  put(sheet, row, 0, made.title);
  put(sheet, row + 1, 0, "Zutat");
  const amountLabel = put(sheet, row + 2, 0, "kg");
  const names = putRow(sheet, row + 1, 1, made.names);
  const kilograms = made.grams.map((grams) => shown(inUnit(grams, "kg"), "0.000"));
  const amounts = putRow(sheet, row + 2, 1, kilograms);
  const after = 1 + names.length;
  put(sheet, row + 1, after, "Kessel voll");
  const sum = shown(`=SUM(${span(amounts)})`, "0.000");
  const total = put(sheet, row + 2, after, sum);
  kit.marked.sums.push({ spot: total, parts: amounts });
  const recipe = markRecipe(kit, made, { names, amounts, amountLabel, total, unit: "kg" });
  strip(sheet, recipe, { row: row + 3, column: 1 }, ANSWERS);
  nameTarget(sheet, recipe, { row: row + 5, column: 0, label: "so soll's werden" });
  return tellIn(sheet, recipe, { row: row + 6, column: 0 }, LADEN) + 1;
}

const STOCK = [
  ["Bestand Truhe", "Becher 120 ml", "Becher 500 ml"],
  [day(45811, "dd.mm."), 48, 22],
  [day(45818, "dd.mm."), 36, 30],
  [day(45825, "dd.mm."), 60, 11],
];

/** Ices of a farm shop, the lists across, the cold room and the stock on the second sheet. */
function hofeis(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rezepte");
  put(sheet, 0, 0, "Hofeis, Kessel zu 12 kg");
  const words = { Zucker: "Rübenzucker", "Sahne 35 %": "Rahm 35 %", Honig: "Blütenhonig" };
  let row = 2;
  for (const made of kit.make(2)) row = across(kit, sheet, called(kilos(made, 12), words), row);
  note(kit, sheet, row, 0, "Obst nur vom eigenen Feld, was übrig ist einfrieren.");
  const other = addSheet(kit.marked.book, "Kühlraum und Truhe");
  const end = readings(
    kit,
    other,
    { row: 0, column: 0 },
    {
      heads: ["KW", "Kühlraum °C", "Truhe Laden °C", "Truhe Lager °C"],
      labels: [22, 23, 24, 25, 26],
      ranges: [
        [2, 5],
        [-20, -17],
        [-24, -20],
      ],
    },
  );
  table(other, { row: end + 1, column: 0 }, STOCK);
}

/** A farm with a shop. */
export const hofeise: readonly Layout[] = [
  { name: "Hofeis, zwei Kessel quer und der Kühlraum", language: "de", build: hofeis },
];
