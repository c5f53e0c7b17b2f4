import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Place, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { DAHEIM, rowsAt, thermometer } from "./words";

const SAID: readonly Said[] = [
  { label: "friert so ab", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser steckt drin", inCell: "g", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "bei −18 °C vom Wasser gefroren", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

const OWN = {
  ...{ Zucker: "Haushaltszucker", Vollmilch: "Frischmilch 3,5 %", Honig: "Bienenhonig" },
  ...{ Wasser: "Leitungswasser", Salz: "Speisesalz" },
};

/** One of the two ices: the amounts carry their unit, the words for it stand under it. */
function ice(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { row, column }: Place): number {
  put(sheet, row, column, made.title);
  const rows = rowsAt(
    sheet,
    { row: row + 1, column },
    made.names.map((item, index) => [item, shown(made.grams[index]!, '0 "g"')]),
  );
  const [names, amounts] = [0, 1].map((at) => rows.map((cells) => cells[at]!));
  const end = row + 1 + rows.length;
  put(sheet, end, column, "das gibt");
  const total = sumOf(kit, sheet, { row: end, column: column + 1 }, amounts!, '0 "g"');
  const lines = { names: names!, amounts: amounts!, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: end + 2, column }, SAID);
  nameTarget(sheet, recipe, { row: next, column, label: "wie Papa es mag" });
  return tellIn(sheet, recipe, { row: next + 1, column }, DAHEIM);
}

const GUESTS = [
  ["Lene", "ja", "keine Nüsse"],
  ["Jonte", "ja", undefined],
  ["Mia", "vielleicht", "ohne Milch"],
  ["Oma und Opa", "ja", undefined],
  ["Familie von unten", "nein", undefined],
];

const SHOPPING = ["Luftballons", "Waffeln", "Obst", "Eisstiele", "Getränke"];

/** What the day costs. */
function purse(kit: Kit, sheet: CorpusSheet, row: number): void {
  putRow(sheet, row, 0, ["Kasse Geburtstag", "Euro"]);
  const paid = SHOPPING.map((thing, index) => {
    const euros = shown(kit.random.whole(199, 2400) / 100, "0.00");
    return putRow(sheet, row + 1 + index, 0, [thing, euros])[1]!;
  });
  put(sheet, row + 1 + paid.length, 0, "alles in allem");
  sumOf(kit, sheet, { row: row + 1 + paid.length, column: 1 }, paid, "0.00");
}

/** Two ices beside each other for a birthday, guests, purse and the freezer on another sheet. */
function birthday(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis");
  put(sheet, 0, 1, "GEBURTSTAG IM GARTEN");
  kit
    .make(2)
    .forEach((made, index) => ice(kit, sheet, called(made, OWN), { row: 2, column: 5 * index }));
  const other = addSheet(kit.marked.book, "Gäste + Geld");
  rowsAt(other, { row: 0, column: 0 }, [["wer", "kommt", "aufpassen"], ...GUESTS]);
  purse(kit, other, 8);
  put(other, 8, 4, "Truhe im Keller");
  ["Mo", "Di", "Mi", "Do", "Fr"].forEach((day, index) => put(other, 10 + index, 4, day));
  thermometer(
    kit,
    other,
    { row: 9, column: 5 },
    {
      ...{ heading: "°C abgelesen", count: 5, range: [-20, -16] },
    },
  );
  note(kit, other, 17, 0, "Formen schon Mittwoch einfrieren, Samstag ist keine Zeit");
}

/** A family's birthday. */
export const geburtstage: readonly Layout[] = [
  { name: "Familie, zwei Eissorten zum Geburtstag", language: "de", build: birthday },
];
