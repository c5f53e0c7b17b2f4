import { addSheet, put, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Place, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { AUSTRIAN, VOICE_OF_A_TEACHER, readings, table } from "./words";

const answersFor = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierbeginn (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "gesamtes Wasser (g)", states: "water", as: "typed", decimals: 0 },
  { label: "davon gelöst, Summe (g)", states: "dissolved", as: "formula", format: "0" },
  ...ofAlcohol(made, "reiner Alkohol (g)"),
  {
    label: "gefrorenes Wasser bei −15 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** A card: grams, the unit, then what it is; gives the next free row. */
function card(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { row, column }: Place): number {
  put(sheet, row, column, `Massenkarte: ${made.title}`);
  const list = listed(
    sheet,
    made,
    { row: row + 1, column },
    {
      heads: ["Menge", "EH", "Rohstoff"],
      cells: (name, grams) => [grams, "g", name],
      ...{ name: 2, amount: 0 },
    },
  );
  const { heads, rows, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column }, amounts);
  put(sheet, end, column + 1, "g");
  put(sheet, end, column + 2, "Masse gesamt");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", unitCells: columnOf(rows, 1), total },
    amountLabel: heads[0]!,
  });
  const next = say(sheet, recipe, { row: end + 1, column: column + 2 }, answersFor(made));
  nameTarget(sheet, recipe, { row: next, column: column + 2, label: "Ausgabe" });
  return tellIn(sheet, recipe, { row: next + 1, column: column + 2 }, VOICE_OF_A_TEACHER);
}

const BOOKED = [
  ["Mo", "Waagen, Schüsseln"],
  ["Di", "Eismaschine"],
  ["Mi", "Schockfroster"],
  ["Do", "Kühlzelle"],
];

/** Four cards, two beside each other, and who cleans what. */
function mappe(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Mappe 2. Lj.");
  put(sheet, 0, 0, "Lehrlingsmappe Konditorei, zweites Lehrjahr");
  put(sheet, 1, 0, "Name: ______________   Datum: ______________");
  const mades = kit.make(4).map((made) => called(made, AUSTRIAN));
  let row = 3;
  for (const pair of [mades.slice(0, 2), mades.slice(2)]) {
    const ends = pair.map((made, index) => card(kit, sheet, made, { row, column: 5 * index }));
    row = Math.max(...ends) + 2;
  }
  const [heads] = table(
    sheet,
    { row: 3, column: 10 },
    ["Tag", "Putzdienst", "Froster 7 Uhr (°C)"],
    BOOKED,
  );
  readings(kit, sheet, heads![2]!, BOOKED.length, [-22, -18]);
  note(kit, sheet, row, 0, "Karten in Folie stecken, nicht falten.");
}

/** A confectioner's apprentices. */
export const lehrlingsmappen: readonly Layout[] = [
  { name: "Lehrlingsmappe, vier Massenkarten paarweise", language: "de", build: mappe },
];
