import { addSheet, put, putRow } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { isBoozy, tellBelow } from "./words";

const SAID: readonly Said[] = [
  { label: "Turns to ice from (°C)", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "In our freezer, −18 °C, this much of the water is ice (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    label: "Sugars for every 100 g of water (g)",
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 0 },
  },
  { label: "Water, the juice and milk counted (g)", states: "water", as: "typed", decimals: 0 },
];

const ALCOHOL: Said = { label: "Alcohol (g)", states: "alcohol", as: "typed", decimals: 1 };

const saidOf = (made: MadeRecipe): readonly Said[] => (isBoozy(made) ? [...SAID, ALCOHOL] : SAID);

const FROM = ["Sandra next door", "the old visitors' book", "a cutting", "my sister"];

/** One ice of the house; gives the row where the next may begin. */
function ice(kit: Kit, top: number, given: MadeRecipe): number {
  const sheet = kit.marked.book.sheets[0]!;
  const made = called(given, { sugar: "white sugar", "egg yolk": "egg yolks" });
  put(sheet, top, 0, made.title.toUpperCase());
  const heads = putRow(sheet, top + 1, 0, ["How much", undefined, "Of what"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 0, [made.grams[index], "g", name]),
  );
  const [amounts, unitCells, names] = [0, 1, 2].map((at) => columnOf(rows, at));
  const end = top + 2 + rows.length;
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts!);
  putRow(sheet, end, 1, ["g", "makes"]);
  const recipe = markRecipe(kit, made, {
    ...{ names: names!, amounts: amounts!, unitCells: unitCells!, unit: "g", total },
    amountLabel: heads[0]!,
  });
  const beside = say(sheet, recipe, { row: top + 2, column: 4 }, saidOf(made));
  nameTarget(sheet, recipe, { row: beside, column: 4, label: "For the table" });
  const next = tellBelow(sheet, recipe, { row: end + 1, column: 0 }, "Card on the table: contains");
  note(kit, sheet, top, 4, `From ${kit.random.pick(FROM)}.`);
  return Math.max(next, beside + 1) + 1;
}

/** The ices of a guest house, one under the other as they came. */
function guestHouse(kit: Kit): void {
  const { marked, random } = kit;
  addSheet(marked.book, "Ices for guests");
  const last = kit.make(4).reduce((row, made) => ice(kit, row, made), 0);
  const sheet = addSheet(marked.book, "Cellar freezer");
  const heads = putRow(sheet, 0, 0, ["Checked", "Reads °C", "By"]);
  const spots = ["1st", "8th", "15th", "22nd", "29th"].map((day, index) => {
    const line = [day, -random.whole(16, 21), random.pick(["me", "Tom"])];
    return putRow(sheet, 1 + index, 0, line)[1]!;
  });
  marked.numberColumns.push({ spots, heading: heads[1]!, total: null, kind: "temperature" });
  const first = marked.book.sheets[0]!;
  note(kit, first, last, 0, "Write on the lid what it is and when it was made.");
}

/** A guest house with a few rooms. */
export const guestHouses: readonly Layout[] = [
  { name: "guest house, ices under one another", language: "en", build: guestHouse },
];
