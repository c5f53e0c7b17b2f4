import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { euros, type PriceOf } from "../callers/prices";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { ofSpirits } from "../passing/words";
import { labelWords, type MadeRecipe } from "../recipes";
import { columnsOf } from "./worte";

const HEADS = ["Menge", "Einheit", "Zutat", "€/kg", "Wert (€)", "zu deklarieren"];

/** The lines in kilograms, the name behind the amount; gives the recipe and the cell of its value. */
function filling(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, price: PriceOf) {
  const top = 6;
  const heads = putRow(sheet, top, 0, HEADS);
  const rows = made.names.map((name, index) => {
    const row = top + 1 + index;
    const amount = shown(inUnit(made.grams[index]!, "kg"), "0.000");
    const cells = putRow(sheet, row, 0, [
      ...[amount, "kg", name, shown(price(made, index), "0.00")],
    ]) as [Spot, Spot, Spot, Spot];
    return [...cells, put(sheet, row, 4, shown(`=${a1(cells[0])}*${a1(cells[3])}`, "0.00"))];
  });
  const [amounts, unitCells, names, values] = columnsOf(rows, 0, 1, 2, 4);
  kit.marked.formulaColumns.push({ spots: values!, heading: heads[4]!, fixed: [] });
  const row = top + 1 + rows.length;
  const total = sumOf(kit, sheet, { row, column: 0 }, amounts!, "0.000");
  putRow(sheet, row, 1, ["kg", "zusammen"]);
  const value = sumOf(kit, sheet, { row, column: 4 }, values!, "0.00");
  const recipe = markRecipe(kit, made, {
    ...{ names: names!, amounts: amounts!, unitCells: unitCells!, total },
    ...{ unit: "kg", amountLabel: heads[0]! },
  });
  return { recipe, total, value };
}

/** In its line what each thing brings, below what the counter has to say. */
function declared(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  const { made, names } = recipe;
  if (!made.flagged) return row;
  made.lines.forEach(({ allergen }, index) => {
    if (allergen === undefined) return;
    recipe.flags.push(put(sheet, names[index]!.row, 5, allergen.de));
  });
  let next = row;
  for (const caution of labelWords(made, "caution")) {
    recipe.flags.push(put(sheet, next++, 0, caution));
  }
  return next;
}

/** How many portions the mass gives, and what each costs. */
function portions(kit: Kit, sheet: CorpusSheet, top: number, total: Spot, value: Spot): void {
  const { random } = kit;
  const words = { label: "Portion wiegt (kg)", bare: "Portion wiegt" };
  const weight = random.pick([0.08, 0.09, 0.11, 0.12]);
  const place = { row: top, column: 0 };
  const portion = input(kit, sheet, place, { ...words, value: weight, format: "0.000" });
  const count = `=${a1(total)}/${a1(portion)}`;
  const [, pieces] = putRow(sheet, top + 1, 0, ["Portionen", shown(count, "0.0")]) as [Spot, Spot];
  const each = putRow(sheet, top + 2, 0, [
    ...["Wareneinsatz je Portion (€)", shown(`=${a1(value)}/${a1(pieces)}`, "0.00")],
  ])[1]!;
  const share = putRow(sheet, top + 3, 0, ["Wareneinsatz vom Preis", shown(0.25, "0%")])[1]!;
  putRow(sheet, top + 4, 0, ["Preis je Portion (€)", shown(`=${a1(each)}/${a1(share)}`, "0.00")]);
}

/** What is known of the mass, the ice for the cabinet's temperature. */
const facts = (made: MadeRecipe, cabinet: Spot, temperatureC: number): Said[] => [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "um wie viel K tiefer als Wasser", states: "depression", as: "formula" },
  {
    label: "Zucker auf 100 g Wasser (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  ...ofSpirits(made, [
    { label: "reiner Alkohol (g)", states: "alcohol", as: "typed", decimals: 1 },
  ]),
  {
    label: "in der Vitrine gefroren (Anteil vom Wasser)",
    ...{ states: "ice of water", as: "formula", percent: "format" },
    ...{ temperature: cabinet, temperatureC },
  },
  {
    label: "Eis in der Vitrine (Anteil der Masse)",
    ...{ states: "ice of mix", as: "formula", percent: "format" },
    ...{ temperature: cabinet, temperatureC },
  },
];

/** One filling on a sheet of its own. */
function bombe(kit: Kit, made: MadeRecipe, title: string, price: PriceOf): void {
  const sheet = addSheet(kit.marked.book, title);
  putRow(sheet, 0, 0, ["Füllmasse", made.title]);
  const temperatureC = -kit.random.whole(12, 16);
  const words = { label: "Vitrine (°C)", bare: "Vitrine", value: temperatureC };
  const cabinet = input(kit, sheet, { row: 1, column: 0 }, words);
  const { recipe, total, value } = filling(kit, sheet, made, price);
  strip(sheet, recipe, { row: 3, column: 0 }, facts(made, cabinet, temperatureC));
  const next = total.row + 2;
  portions(kit, sheet, next, total, value);
  nameTarget(sheet, recipe, { row: next + 5, column: 0, label: "gewünscht" });
  const free = declared(sheet, recipe, next + 7);
  note(kit, sheet, free + 1, 0, "Formen eine Nacht vorher in die Kälte, Biskuit erst am Morgen.");
}

/** Fillings for ice cakes, a sheet each. */
function bomben(kit: Kit): void {
  const price = euros(kit.random);
  kit.make(2).forEach((given, index) => {
    const made = called(given, { Zucker: "Kristallzucker", Eigelb: "Eidotter" });
    bombe(kit, made, ["Bombe A", "Bombe B"][index]!, price);
  });
}

/** The pastry master's ice cakes. */
export const bombenLayouts: readonly Layout[] = [
  { name: "Konditormeister, Eisbomben in Kilogramm", language: "de", build: bomben },
];
