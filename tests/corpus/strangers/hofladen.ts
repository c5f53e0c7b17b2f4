import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { columnOf } from "../kitchens/hand";
import { toldOf } from "./etikett";
import { batchOf } from "./mengen";
import { eurosPerKg } from "./preise";
import { under } from "./zeilen";

const TOP = 5;

interface Shelf {
  readonly names: readonly Spot[];
  readonly prices: readonly Spot[];
  readonly cup: Spot;
  readonly title: Spot;
  /** Labels under the list, from the sum on. */
  readonly labels: readonly Spot[];
}

const BELOW = [
  ...["Summe", "Becher aus einem Ansatz", "Ware für einen Ansatz (€)", "Ware je Becher (€)"],
  ...["Gefrierpunkt (°C)", "enthält Wasser (g)", "Zucker auf 100 g Wasser (g)"],
  ...["Wasser gefroren in der Truhe bei −18 °C (%)", "Soll sein", "Auf das Etikett"],
];

const SAID: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula" },
  { states: "water", as: "formula", format: "0" },
  { states: "sugar per 100 g water", as: "typed", decimals: 1 },
  { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
];

/** What a batch makes and what its goods cost, under its sum. */
function cups(sheet: CorpusSheet, all: readonly Spot[], total: Spot, shelf: Shelf): void {
  const { row, column } = total;
  const count = put(sheet, row + 1, column, shown(`=${a1(total)}/${fixed(shelf.cup)}`, "0.0"));
  const goods = `=SUMPRODUCT(${absolute(span(shelf.prices))},${span(all)})/1000`;
  const cost = put(sheet, row + 2, column, shown(goods, "0.00"));
  put(sheet, row + 3, column, shown(`=${a1(cost)}/${a1(count)}`, "0.00"));
}

/** One kind of the season down its column. */
function kind(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, shelf: Shelf): void {
  const { names, title: amountLabel, labels } = shelf;
  put(sheet, TOP - 1, column, made.title);
  const words = names.map(({ row }) => sheet.cells[row]![0]!.content);
  const own = made.names.map((name) => names[words.indexOf(name)]!);
  const amounts = own.map(({ row }, line) => put(sheet, row, column, made.grams[line]));
  const all = names.map(({ row }) => ({ sheet: sheet.name, row, column }));
  const total = under(kit, all);
  cups(sheet, all, total, shelf);
  const recipe = markRecipe(kit, made, {
    ...{ names: own, amounts, unit: "g", amountLabel, total, shared: true },
  });
  const lines = `${absolute(span(names))},${span(all)}`;
  SAID.forEach((plan, index) => {
    const label = labels[4 + index]!;
    resultAt(sheet, recipe, label, { row: label.row, column }, plan, () => lines);
  });
  nameTarget(sheet, recipe, { row: labels[8]!.row, column });
  const told = toldOf(made);
  if (made.flagged && told !== "") recipe.flags.push(put(sheet, labels[9]!.row, column, told));
}

/** The season's kinds in columns, prices beside the ingredients, cups at the bottom. */
function season(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Sommersorten");
  const title = put(sheet, 0, 0, "Unsere Sommersorten (Gramm je Ansatz)");
  const words = { label: "In den Becher kommen (g)", bare: "In den Becher kommen" };
  const value = random.pick([80, 110, 125]);
  const cup = input(kit, sheet, { row: 2, column: 0 }, { ...words, value });
  const mades = kit.make(4).map((made) => batchOf(made, 4));
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  putRow(sheet, TOP - 1, 0, ["Zutat", "€/kg"]);
  const rows = items.map((item, index) => {
    const price = eurosPerKg(random, item);
    return putRow(sheet, TOP + index, 0, [item, shown(price, "0.00")]);
  });
  const [names, prices] = [columnOf(rows, 0), columnOf(rows, 1)];
  const labels = BELOW.map((label, index) => put(sheet, TOP + items.length + index, 0, label));
  const shelf = { names, prices, cup, title, labels };
  mades.forEach((made, index) => kind(kit, sheet, made, 2 + index, shelf));
  const row = labels.at(-1)!.row + 2;
  note(kit, sheet, row, 0, "Erdbeeren vom eigenen Feld sind mit Pflücklohn gerechnet.");
}

/** Sheets of a farm shop. */
export const hofladen: readonly Layout[] = [
  { name: "Hofladen, Sommersorten in Spalten", language: "de", build: season },
];
