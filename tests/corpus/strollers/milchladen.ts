import { a1, addSheet, fixed, put, putRow, span, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MadeRecipe } from "../recipes";
import { labelAt, ofAlcohol, temperatures, upTo } from "./words";

const HEADS = ["Pos.", "Rohstoff", "Los", "Einwaage (kg)", "Anteil (%)"];

/** What the file says of a batch. */
const answersFor = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt der Charge (°C)", states: "freezing point", as: "typed" },
  { label: "Wasser in der Charge (g)", states: "water", as: "typed", decimals: 0 },
  { label: "davon gelöst (g)", states: "dissolved", as: "typed", decimals: 0 },
  ...ofAlcohol(made, "reiner Alkohol (g)"),
  {
    label: "Zucker (g je 100 g Wasser)",
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  {
    label: "Wasser zu Eis geworden bei −18 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18 },
  },
];

/** One batch of the file; gives the row for the next. */
function charge(kit: Kit, made: MadeRecipe, top: number, day: string): number {
  const sheet = kit.marked.book.sheets[0]!;
  putRow(sheet, top, 0, ["Charge", `${day}/1`, undefined, made.title]);
  const heads = putRow(sheet, top + 1, 0, HEADS);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 0, [
      ...[index + 1, name, `L${kit.random.whole(100, 999)}`, inUnit(made.grams[index]!, "kg")],
    ]),
  );
  const [names, amounts] = [columnOf(rows, 1), columnOf(rows, 3)] as [Spot[], Spot[]];
  const row = top + 2 + rows.length;
  put(sheet, row, 1, "Summe Charge");
  const total = put(sheet, row, 3, `=ROUND(SUM(${span(amounts)}),3)`);
  const alsoAmounts = amounts.map((spot) =>
    put(sheet, spot.row, 4, `=ROUND(100*${a1(spot)}/${fixed(total)},2)`),
  );
  put(sheet, row, 4, `=ROUND(SUM(${span(alsoAmounts)}),1)`);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "kg", amountLabel: heads[3]!, total },
  });
  let next = say(sheet, recipe, { row: row + 1, column: 1 }, answersFor(made));
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "Serviervorschlag" });
  return labelAt(sheet, recipe, { row: next, column: 1 }, "Allergene:") + 1;
}

const CELLAR = ["Mo früh", "Mo abends", "Di früh", "Di abends"];

/** A dairy shop's batches and the reading of its cold store, as a file. */
function milchladen(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Chargen");
  const mades = kit.make(2).map((made) => called(upTo(made, 6000), { Zucker: "Kristallzucker" }));
  let top = 0;
  mades.forEach((made, index) => {
    top = charge(kit, made, top, ["14.7.", "15.7."][index]!);
  });
  const heads = putRow(sheet, top, 0, ["Kühlraum", "Ablesung (°C)", "Zeichen"]);
  const rows = CELLAR.map((when, index) =>
    putRow(sheet, top + 1 + index, 0, [
      ...[when, -random.whole(171, 212) / 10, random.pick(["R", "M", "T"])],
    ]),
  );
  temperatures(kit, heads[1]!, columnOf(rows, 1));
  note(kit, sheet, top + 6, 0, "Ausgelesen am Waagenrechner");
}

/** A dairy with a shop. */
export const milchlaeden: readonly Layout[] = [
  {
    ...{ name: "Milchladen, Chargen von der Waage als Datei", language: "de" },
    ...{ isCsv: true, build: milchladen },
  },
];
