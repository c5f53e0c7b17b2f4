import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { say, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { ifAlcoholic, inGerman, ownList } from "./words";

const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "wird fest ab", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser insgesamt", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "darin gelöst", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Eis in der Masse bei −18 °C", inCell: "%", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -18, decimals: 0 },
  },
  ...ifAlcoholic(made, {
    ...{ label: "reiner Alkohol", inCell: "g", states: "alcohol", as: "typed", decimals: 1 },
  }),
];

const FROM = ["von Oma Trude", "aus dem Landfrauenheft", "selbst ausgedacht"];

/** One card; gives its last row. */
function card(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, index: number): number {
  const column = 4 * index;
  put(sheet, 2, column, made.title);
  note(kit, sheet, 3, column, FROM[index]!);
  const { recipe, end } = ownList(
    kit,
    sheet,
    made,
    { row: 4, column },
    {
      heads: ["Was", "Wie viel", "Maß"],
      cells: (item, grams) => [item, grams, "g"],
      ...{ name: 0, amount: 1, units: 2, unit: "g", total: "ergibt" },
    },
  );
  put(sheet, end, column + 2, "g");
  const next = say(sheet, recipe, { row: end + 2, column }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column, label: "Serviert" });
  return tellIn(sheet, recipe, { row: next + 1, column }, inGerman("Allergene:"));
}

/** When the café is open, and how cold its chest was then. */
function days(kit: Kit, sheet: CorpusSheet, row: number): void {
  const heads = putRow(sheet, row, 0, ["Café", "offen", "Truhe (°C)"]);
  const rows = ["Freitag", "Samstag", "Sonntag", "Feiertag"].map((day, index) =>
    putRow(sheet, row + 1 + index, 0, [
      ...[day, index === 0 ? "ab 14 Uhr" : "ab 11 Uhr", -kit.random.whole(17, 22)],
    ]),
  );
  temperatures(kit, heads[2]!, columnOf(rows, 2));
}

/** Three cards beside each other. */
function cards(kit: Kit): void {
  const own = { Zitronensaft: "Zitronensaft frisch" };
  const sheet = addSheet(kit.marked.book, "Eiskarten");
  put(sheet, 0, 0, "Unsere drei Sorten im Hofcafé");
  const ends = kit.make(3).map((made, index) => card(kit, sheet, called(made, own), index));
  days(kit, sheet, Math.max(...ends) + 2);
}

/** A café on a farm. */
export const karten: readonly Layout[] = [
  { name: "Hofcafé, drei Karten nebeneinander", language: "de", build: cards },
];
