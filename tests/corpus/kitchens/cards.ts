import { a1, addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Place } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { called, columnOf } from "./hand";
import { jars } from "./jars";

/** One card: the title, what it is for, the lines with grams before names, what it gives. */
function card(kit: Kit, made: MadeRecipe, { row, column }: Place): void {
  const sheet = kit.marked.book.sheets[0]!;
  put(sheet, row, column, made.title);
  const heads = putRow(sheet, row + 2, column, ["grams", "of"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, row + 3 + index, column, [made.grams[index], name]),
  );
  const [amounts, names] = [columnOf(rows, 0), columnOf(rows, 1)];
  const last = row + 3 + rows.length;
  put(sheet, last, column + 1, "total");
  const total = sumOf(kit, sheet, { row: last, column }, amounts);
  const amountLabel = heads[0]!;
  const recipe = markRecipe(kit, made, { names, amounts, unit: "g", amountLabel, total });
  nameTarget(sheet, recipe, { row: row + 1, column, label: "for" });
  const next = say(sheet, recipe, { row: last + 1, column }, [
    { label: "freezing point, °C", states: "freezing point", as: "typed", decimals: 1 },
    {
      label: "ice in the mix at −16 °C, %",
      ...{ states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
    },
    { label: "dissolved solids, g", states: "dissolved", as: "typed", decimals: 0 },
  ]);
  tell(kit, sheet, recipe, { row: next, column, as: "sentence" });
}

/** Four cards on one sheet, two and two. */
function cardsInFours(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Cards");
  const mades = kit.make(4).map((made) => called(made, { sugar: "white sugar" }));
  const second = 10 + Math.max(...mades.slice(0, 2).map(({ names }) => names.length));
  mades.forEach((made, index) =>
    card(kit, made, { row: index < 2 ? 0 : second, column: 3 * (index % 2) }),
  );
  const below = second + 10 + Math.max(...mades.slice(2).map(({ names }) => names.length));
  note(kit, sheet, below, 0, "Cards copied from the blue notebook.");
}

/** The shopping as a table; gives nothing: it is read by its name. */
function shopping(kit: Kit, wanted: readonly string[]): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Einkauf");
  const columns = ["Artikel", "Gebinde (g)", "Preis (€)", "Preis je kg"];
  const heads = putRow(sheet, 0, 0, columns);
  const items = [...new Set([...wanted, "Vollmilch", "Kristallzucker", "Zitronensaft"])];
  const perKilo = items.map((item, index) => {
    const row = 1 + index;
    const packGrams = item === "Wasser" ? 20000 : random.pick([250, 500, 1000, 2500]);
    const perGram = item === "Wasser" ? 0.03 : random.between(0.8, 9);
    const price = Math.round((packGrams * perGram) / 10) / 100;
    const [, pack, paid] = putRow(sheet, row, 0, [item, packGrams, shown(price, "0.00")]);
    return put(sheet, row, 3, shown(`=${a1(paid!)}/${a1(pack!)}*1000`, "0.00"));
  });
  marked.formulaColumns.push({ spots: perKilo, heading: heads[3]!, fixed: [] });
  const range = { top: 0, left: 0, bottom: items.length, right: 3 };
  sheet.tables.push({ name: "Einkauf", range, columns, hasTotals: false });
}

/** What goes on top, from packets on a sheet of their own. */
function topping(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { marked, random } = kit;
  const bought = addSheet(marked.book, "Zugekauft");
  const items = ["Marktfrau Beerensoße", "Brombeerguss vom Markt"];
  const own = jars(
    kit,
    bought,
    { row: 0, column: 1 },
    {
      headings: ["name", "Zucker", "Wasser", "Fett", "Eiweiß", "inert", "Allergene", "Quelle"],
      ...{ items, none: "keine", source: "Packung" },
    },
  );
  putRow(sheet, row, 0, ["Obendrauf", "Menge (g)"]);
  const lines = [...items.map((each) => [each, 10 * random.whole(8, 20)] as const), ["Wasser", 40]];
  const rows = lines.map((each, index) => putRow(sheet, row + 1 + index, 0, each));
  const both = [0, 1].map((at) => span(columnOf(rows, at))).join(",");
  const call = shown(`=RIME.FREEZINGPOINT(${both},Zugekauft!${own})`, "0.00");
  putRow(sheet, row + 4, 0, ["Gefrierpunkt obendrauf (°C)", call]);
}

/** A recipe priced from the table, its results over the list. */
function fromTable(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Rezept");
  const made = called(kit.make(1)[0]!, { Zucker: "Kristallzucker", Salz: "Kochsalz" });
  shopping(kit, made.names);
  put(sheet, 0, 0, made.title);
  const heads = putRow(sheet, 7, 0, ["Zutat", "Menge (g)", "€ je kg", "Kosten (€)"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 8 + index, 0, [name, made.grams[index]]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const costs = amounts.map((spot, index) => {
    const found = `=INDEX(Einkauf[Preis je kg],MATCH(${a1(names[index]!)},Einkauf[Artikel],0))`;
    const price = put(sheet, spot.row, 2, shown(found, "0.00"));
    return put(sheet, spot.row, 3, shown(`=${a1(spot)}*${a1(price)}/1000`, "0.00"));
  });
  marked.formulaColumns.push({ spots: costs, heading: heads[3]!, fixed: [] });
  const row = 8 + rows.length;
  put(sheet, row, 0, "Gesamt");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts);
  sumOf(kit, sheet, { row, column: 3 }, costs, "0.00");
  const amountLabel = heads[1]!;
  const recipe = markRecipe(kit, made, { names, amounts, unit: "g", amountLabel, total });
  const next = say(sheet, recipe, { row: 1, column: 0 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "Wasser", inCell: "g", states: "water", as: "formula", format: "0" },
    { label: "reiner Alkohol", inCell: "g", states: "alcohol", as: "formula", format: "0.0" },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Ziel" });
  const told = tell(kit, sheet, recipe, { row: row + 2, column: 0, as: "pair" });
  note(kit, sheet, told, 0, "Preise brutto, Stand Mai.");
  topping(kit, sheet, told + 2);
}

/** Recipes on cards, and one priced from a table. */
export const cards: readonly Layout[] = [
  { name: "four cards on a sheet", language: "en", build: cardsInFours },
  { name: "Rezept mit Einkaufstabelle", language: "de", build: fromTable },
];
