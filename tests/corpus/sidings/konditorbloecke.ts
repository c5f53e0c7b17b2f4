import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { say, type Place, type Said } from "../layouts/parts";
import { List } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { degrees, inGerman, price, readings, smallTable } from "./words";

const VOICE = inGerman("Enthält");

const SAID = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser im Ansatz, g", states: "water", as: "formula", format: "0" },
  {
    label: "Eis im Ansatz bei −15 °C, %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  },
  ...ofAlcohol(made, "reiner Alkohol, g"),
];

/** Ein Rezept in seinem Block: Gramm zuerst, Kosten rechts. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { row, column }: Place) {
  put(sheet, row, column, made.title);
  const { recipe, totalRow } = new List(kit, sheet, made, {
    ...{ top: row + 1, left: column, unit: "g", total: "gesamt" },
    columns: ["amount", "name", "share", "price", "cost"],
    headings: {
      ...{ amount: "g", name: "Zutat", share: "Anteil" },
      ...{ price: "€/kg", cost: "Kosten €" },
    },
    priceOf: (_, index) => shown(price(kit, made.names[index]!), "0.00"),
  });
  const said = say(sheet, recipe, { row: totalRow + 2, column: column + 1 }, SAID(made));
  nameTarget(sheet, recipe, { row: said, column: column + 1, label: "soll sein" });
  const end = tellIn(sheet, recipe, { row: said + 1, column }, VOICE);
  return { recipe, end };
}

/** Wie viele Bomben zu 900 g ein Ansatz gibt. */
function yields(sheet: CorpusSheet, row: number, recipes: readonly MarkedRecipe[]): void {
  const heads = ["Ansatz", "Bomben zu 900 g"];
  const rows = recipes.map(({ made, total }) => [made.title, shown(`=${a1(total!)}/900`, "0.0")]);
  smallTable(sheet, { row, column: 0 }, heads, rows);
}

/** Was die Truhen zeigten. */
function cabinets(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { heads, rows } = smallTable(
    sheet,
    { row, column: 6 },
    ["Datum", "Truhe Laden °C", "Schockfroster °C"],
    ["02.12.", "05.12.", "09.12.", "12.12.", "16.12."].map((day) => [
      ...[day, degrees(kit, -18, -15), degrees(kit, -36, -30)],
    ]),
  );
  for (const at of [1, 2]) {
    const spots: Spot[] = rows.map((cells) => cells[at]!);
    readings(kit, heads[at]!, spots);
  }
}

/** Vier Ansätze, zwei nebeneinander und zwei darunter. */
function build(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eisbomben");
  putRow(sheet, 0, 0, ["Eisbomben Weihnachten", undefined, undefined, "Bestellschluss 18.12."]);
  const own = { Zucker: "Feinkristallzucker", Zitronensaft: "frischer Zitronensaft" };
  const mades = kit.make(4).map((made) => called(made, own));
  const blocks: { recipe: MarkedRecipe; end: number }[] = [];
  let top = 2;
  for (const at of [0, 2]) {
    for (const side of [0, 1]) {
      const place = { row: top, column: 6 * side };
      blocks.push(block(kit, sheet, mades[at + side]!, place));
    }
    top = Math.max(...blocks.map(({ end }) => end)) + 2;
  }
  const recipes = blocks.map(({ recipe }) => recipe);
  yields(sheet, top, recipes);
  cabinets(kit, sheet, top);
  note(kit, sheet, top + 7, 0, "Formen vor dem Füllen mindestens zwei Stunden frosten.");
}

/** Eine Konditorei vor Weihnachten. */
export const konditorbloecke: readonly Layout[] = [
  { name: "Konditorei, vier Ansätze für Eisbomben in Blöcken", language: "de", build },
];
