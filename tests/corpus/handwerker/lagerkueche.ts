import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf } from "../strollers/words";
import { SWISS, VOICE_OF_THE_ALPS, readings, swissTitle, table } from "./words";

const ANSWERS: readonly Said[] = [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser drin (g)", states: "water", as: "formula", format: "0" },
  { label: "gelöst (g)", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Zucker pro 100 g Wasser (g)", states: "sugar per 100 g water", as: "typed" },
  {
    label: "Eis in der Masse bei −15 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** A recipe along two rows, times the pots under them; gives the cell of the whole. */
function across(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, pots: Spot): Spot {
  put(sheet, top, 0, swissTitle(made.title));
  const names = putRow(sheet, top, 1, made.names);
  const sumColumn = 1 + names.length;
  put(sheet, top, sumColumn, "Total");
  const label = put(sheet, top + 1, 0, "ein Kessel (g)");
  const amounts = putRow(
    sheet,
    top + 1,
    1,
    made.grams.map((grams) => shown(grams, "0")),
  );
  const total = sumOf(kit, sheet, { row: top + 1, column: sumColumn }, amounts);
  const heading = put(sheet, top + 2, 0, "ganzes Lager (g)");
  const camp = amounts.map((spot) =>
    put(sheet, top + 2, spot.column, shown(`=${a1(spot)}*${fixed(pots)}`, "0")),
  );
  kit.marked.formulaColumns.push({ spots: camp, heading, fixed: [pots] });
  const whole = sumOf(kit, sheet, { row: top + 2, column: sumColumn }, camp, "0");
  const lines = { names, amounts, alsoAmounts: camp, total, amountLabel: label } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  strip(sheet, recipe, { row: top + 4, column: 1 }, ANSWERS);
  nameTarget(sheet, recipe, { row: top + 6, column: 1, label: "so soll's sein" });
  tellIn(sheet, recipe, { row: top + 7, column: 1 }, VOICE_OF_THE_ALPS);
  return whole;
}

const DUTY = [
  ["Füchse", "rüsten"],
  ["Dachse", "rühren"],
  ["Luchse", "abwaschen"],
];

/** Ices of a camp, ingredients across, and who has to help. */
function lager(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Glace im Lager");
  put(sheet, 0, 0, "Sommerlager, Küchenbuch: Glace am Besuchstag");
  const pots = putRow(sheet, 1, 0, ["Kessel pro Sorte", kit.random.whole(3, 5)])[1]!;
  const portion = given(kit, sheet, [2, 0], ["ein Schöpfer", "g", kit.random.pick([80, 90, 100])]);
  const mades = madeOf(kit, 3, (made) => !isAlcoholic(made)).map((made) => called(made, SWISS));
  const parts = mades.map((made, index) => across(kit, sheet, made, 4 + 9 * index, pots));
  const row = 4 + 9 * mades.length;
  const sum = `=${parts.map(a1).join("+")}`;
  const spot = putRow(sheet, row, 0, ["alle Sorten (g)", shown(sum, "0")])[1]!;
  kit.marked.sums.push({ spot, parts });
  putRow(sheet, row + 1, 0, ["reicht für Schöpfer", shown(`=${a1(spot)}/${a1(portion)}`, "0")]);
  const heads = ["Gruppe", "Ämtli", "Kühlbox mittags (°C)"];
  const [titles] = table(sheet, { row: row + 3, column: 0 }, heads, DUTY);
  readings(kit, sheet, titles![2]!, DUTY.length, [-14, -9]);
  note(kit, sheet, row + 8, 0, "Salz für die Kühlbox nicht mit dem Kochsalz verwechseln.");
}

/** A camp's kitchen. */
export const lagerkuechen: readonly Layout[] = [
  { name: "Lagerküche, Zutaten quer und Kessel darunter", language: "de", build: lager },
];
