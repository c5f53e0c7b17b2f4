import { addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt (°C):", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser im Topf (g):", states: "water", as: "formula", format: "0" },
  {
    label: "Zucker je 100 g Wasser (g):",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 0,
  },
  {
    ...{ label: "Eis in der Masse bei −11 °C (%):", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -11, decimals: 0 },
  },
];

const EVENING: readonly (readonly [string, string])[] = [
  ["18:00", "Begrüßung, Hände waschen"],
  ["18:15", "Abwiegen zu zweit"],
  ["19:00", "Maschine läuft, Theorie"],
  ["19:45", "Kosten und vergleichen"],
  ["20:30", "Aufräumen"],
];

/** Two columns without a word over them, no sum: who cooks at home needs none. */
function weighing(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const { names, amounts, rows } = listed(
    sheet,
    made,
    { row: 3, column: 1 },
    {
      heads: ["Für die Maschine im Kursraum"],
      cells: (item, grams) => [grams, "g", item],
      ...{ name: 2, amount: 0 },
    },
  );
  return markRecipe(kit, made, { names, amounts, unitCells: columnOf(rows, 1), unit: "g" });
}

/** What two freezers at home did, as the participants told. */
function atHome(kit: Kit, sheet: CorpusSheet, row: number): void {
  const heads = putRow(sheet, row, 5, ["Gefrierfach von", "Anzeige (°C)", "gemessen (°C)"]);
  const rows = ["Hilde", "Cem", "Ute", "Paul"].map((name, index) =>
    putRow(sheet, row + 1 + index, 5, [
      ...[name, -18, shown(-kit.random.whole(30, 39) / 2, "0.0")],
    ]),
  );
  temperatures(kit, heads[2]!, columnOf(rows, 2));
}

/** What everyone pays for the ingredients. */
function contribution(kit: Kit, sheet: CorpusSheet, row: number): void {
  putRow(sheet, row, 1, ["Umlage", undefined, "€"]);
  const paid = ["Markt", "Supermarkt", "Küchenpauschale"].map((shop, index) => {
    put(sheet, row + 1 + index, 1, shop);
    return put(sheet, row + 1 + index, 3, shown(kit.random.whole(500, 2400) / 100, "0.00"));
  });
  put(sheet, row + 4, 1, "Gesamt");
  const spot = put(sheet, row + 4, 3, shown(`=SUM(${span(paid)})`, "0.00"));
  kit.marked.sums.push({ spot, parts: paid });
}

/** A handout of an evening class. */
function evening(kit: Kit): void {
  const own = { Wasser: "Leitungswasser", Salz: "Speisesalz" };
  const made = called(kit.make(1)[0]!, own);
  const sheet = addSheet(kit.marked.book, "Kursabend 2");
  put(sheet, 0, 1, "Eis selbst gemacht, Abend 2");
  put(sheet, 1, 1, made.title);
  const recipe = weighing(kit, sheet, made);
  EVENING.forEach((cells, index) => putRow(sheet, 3 + index, 5, cells));
  const end = 5 + made.names.length;
  const next = say(sheet, recipe, { row: end, column: 3 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "So soll es sein:" });
  const last = tell(kit, sheet, recipe, { row: next + 2, column: 1, as: "sentence" });
  atHome(kit, sheet, last + 1);
  contribution(kit, sheet, last + 1);
  note(kit, sheet, last + 7, 1, "Schürze, Dose mit Deckel und Geschirrtuch mitbringen");
}

/** An evening class. */
export const kursblatt: readonly Layout[] = [
  { name: "Volkshochschule, Rezeptblatt zum Kursabend", language: "de", build: evening },
];
