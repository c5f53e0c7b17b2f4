import { addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { putList } from "./lists";
import { thermometers } from "./words";

const VOICE: Voice = {
  lead: "Service muss ansagen:",
  honey: "Honig drin (keine Säuglinge unter 12 Monaten).",
  alcohol: "Alkohol drin (keine Kinder, keine Schwangeren, niemand, der fährt).",
  nuts: "Ganze Nüsse (Erstickungsgefahr unter 5 Jahren).",
  egg: "Rohes Eigelb (auf 71 °C abziehen oder pasteurisiertes nehmen).",
};

const SAID: readonly Said[] = [
  { label: "GP °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "ΔT K", states: "depression", as: "formula" },
  { label: "Wasser g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "% vom Wasser fest bei −14 °C", states: "ice of water", as: "typed" },
    ...{ temperatureC: -14, decimals: 0 },
  },
];

const OWN = { Zucker: "Zucker, fein", Wasser: "Wasser, kalt", Eigelb: "Eigelb" };

/** A recipe in its half of the page: the sum first, then amount, unit and item. */
function half(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, left: number): void {
  put(sheet, 2, left, made.title.toUpperCase());
  const heads = putRow(sheet, 4, left, ["Menge", undefined, "Zutat"]);
  const list = putList(sheet, made, {
    ...{ row: 5, column: left, name: 2, amount: 0 },
    cells: (item, grams) => [shown(inUnit(grams, "kg"), "0.000"), "kg", item],
  });
  const { names, amounts, end } = list;
  const total = put(sheet, 3, left, shown(`=SUM(${span(amounts)})`, "0.000"));
  kit.marked.sums.push({ spot: total, parts: amounts });
  putRow(sheet, 3, left + 1, ["kg", "Masse"]);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, total, unit: "kg", unitCells: list.column(1), amountLabel: heads[0]! },
  });
  strip(sheet, recipe, { row: end + 1, column: left }, SAID);
  nameTarget(sheet, recipe, { row: end + 4, column: left, label: "Service:" });
  tellIn(sheet, recipe, { row: end + 5, column: left }, VOICE);
}

/** A double page: two recipes, the fridges of the station below. */
function doublePage(kit: Kit, name: string): void {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, `Postenbuch Pâtisserie – ${name}`);
  kit.make(2).forEach((made, index) => {
    half(kit, sheet, called(upTo(made, 2500), OWN), 5 * index);
  });
  thermometers(
    kit,
    sheet,
    { row: 20, column: 0 },
    {
      heads: ["Kühlung", "10 Uhr °C", "17 Uhr °C", "23 Uhr °C"],
      lines: ["TK links", "TK rechts", "Eistruhe"],
      ...{ from: -20, to: -13 },
    },
  );
  note(kit, sheet, 25, 0, "Unterschrift Posten: ________");
}

/** The book of a pastry station, two recipes a page. */
function postenbuch(kit: Kit): void {
  doublePage(kit, "Frühjahr");
  doublePage(kit, "Sommer");
}

/** A restaurant's pastry station. */
export const postenbuecher: readonly Layout[] = [
  { name: "Restaurant, Postenbuch mit zwei Eisen je Seite", language: "de", build: postenbuch },
];
