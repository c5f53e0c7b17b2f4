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
import { desk, down, linesOn } from "../callers/desk";
import { euros } from "../callers/prices";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, say, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { columnsOf, goods, labelAt, shopPhrases } from "./worte";

const SACKS = [1, 2.5, 5, 10, 25];

/** What is bought, by the sack; gives the block of names and prices a kilogram. */
function purchases(kit: Kit, mades: readonly MadeRecipe[]): string {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Einkauf");
  put(sheet, 0, 0, "Einkaufspreise netto, Herbst");
  const heads = putRow(sheet, 2, 0, [
    ...["Rohstoff", "Gebinde (kg)", "Preis je Gebinde (€)", "Preis je kg (€)"],
  ]);
  const price = euros(random);
  const rows = goods(mades).map(({ name, made, index }, at) => {
    const row = 3 + at;
    const size = random.pick(SACKS);
    const paid = shown(Number((size * price(made, index)).toFixed(2)), "0.00");
    const [item, sack, cost] = putRow(sheet, row, 0, [name, size, paid]) as [Spot, Spot, Spot];
    return [item, put(sheet, row, 3, shown(`=${a1(cost)}/${a1(sack)}`, "0.00"))];
  });
  const [names, prices] = columnsOf(rows, 0, 1) as [Spot[], Spot[]];
  marked.formulaColumns.push({ spots: prices, heading: heads[3]!, fixed: [] });
  return `Einkauf!${absolute(span([...names, ...prices]))}`;
}

const KNOWN: readonly Said[] = [
  { label: "beginnt zu frieren bei (°C)", states: "freezing point", as: "formula" },
  { label: "Wasser insgesamt im Grundansatz (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Zucker im Verhältnis zur Masse (%)", states: "sugar share", as: "typed" },
  {
    label: "bei −18 °C gefroren (% vom Wasser)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

const HEADS = ["Rohstoff", "Grundansatz (g)", "Blech (g)", "€ je kg", "€ je Blech"];

/** What a tray and a piece of it cost, beside the list; gives the next free row. */
function calculation(kit: Kit, sheet: CorpusSheet, top: number, tray: Spot): number {
  const { random } = kit;
  const line = (row: number, label: string, content: number | string, format?: string): Spot =>
    putRow(sheet, row, 6, [label, format === undefined ? content : shown(content, format)])[1]!;
  const pieces = line(top, "Portionen je Blech", random.pick([20, 24, 30, 35]));
  const gone = line(top + 1, "Einsatz je Portion (€)", `=${a1(tray)}/${a1(pieces)}`, "0.00");
  const times = line(top + 2, "Aufschlag (Faktor)", random.pick([3.2, 3.5, 3.8]));
  line(top + 3, "Verkauf je Portion (€)", `=${a1(gone)}*${a1(times)}`, "0.00");
  return top + 5;
}

/** One page of the book; gives the row of the next. */
function entry(kit: Kit, made: MadeRecipe, top: number, prices: string): number {
  const { random, marked } = kit;
  const sheet = marked.book.sheets[1]!;
  putRow(sheet, top, 0, [`Nr. ${random.whole(11, 79)}`, made.title]);
  const [label, fill] = putRow(sheet, top + 1, 0, [
    ...["Füllgewicht je Blech (g)", random.pick([1800, 2000, 2400, 3000])],
  ]) as [Spot, Spot];
  marked.inputs.push({ label, value: fill, bare: "Füllgewicht je Blech" });
  const list = desk(kit, sheet, made, {
    ...{ row: top + 2, column: 0, heads: HEADS, name: 0, amount: 1, sum: "Masse gesamt" },
    cells: (index) => [made.names[index], made.grams[index]],
  });
  const { heads, names, amounts, total, end } = list;
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[2]!, format: "0", fixed: [total, fill], end },
    formula: (cell) => `=${cell}/${fixed(total)}*${fixed(fill)}`,
  });
  const perKg = down(kit, sheet, names, {
    ...{ heading: heads[3]!, format: "0.00" },
    formula: (cell) => `=VLOOKUP(${cell},${prices},4,0)`,
  });
  down(kit, sheet, alsoAmounts, {
    ...{ heading: heads[4]!, format: "0.00", end },
    formula: (cell, index) => `=${cell}*${a1(perKg[index]!)}/1000`,
  });
  const recipe = markRecipe(kit, made, { ...linesOn(list), alsoAmounts, unit: "g" });
  const tray = { sheet: sheet.name, row: end, column: 4 };
  const next = say(
    sheet,
    recipe,
    { row: calculation(kit, sheet, top + 2, tray), column: 6 },
    KNOWN,
  );
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Konsistenz" });
  const told = { lead: "Kennzeichnung:", phrases: shopPhrases };
  return labelAt(sheet, recipe, { row: Math.max(end, next) + 1, column: 0 }, told) + 1;
}

/** A pastry master's book: by the tray, and what a piece of it costs. */
function book(kit: Kit): void {
  const mades = kit.make(3);
  const prices = purchases(kit, mades);
  const sheet = addSheet(kit.marked.book, "Rezepturbuch");
  let top = 1;
  for (const made of mades) top = entry(kit, made, top, prices) + 1;
  note(kit, sheet, 0, 0, "Gefrorenes vom Blech, Lehrlinge bitte nur nach dem Buch arbeiten");
}

/** A pastry master. */
export const konditoren: readonly Layout[] = [
  { name: "Konditormeister, Rezepturbuch je Blech", language: "de", build: book },
];
