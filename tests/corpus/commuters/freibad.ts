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
import { called, columnOf } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf, upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { alcoholIn, asked, counted, warnAt } from "./words";

/** What is bought, and what a kilogram of it costs; gives the block for the look-up. */
function groceries(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): string {
  const { random } = kit;
  put(sheet, 0, 0, "Großmarkt, Preise netto, Stand 3. Mai");
  const heads = putRow(sheet, 1, 0, ["Ware", "Gebinde (kg)", "Gebindepreis (€)", "€ je kg"]);
  const lines = mades.flatMap((made) => made.lines);
  const names = mades.flatMap((made) => made.names);
  const rows = itemsOf(mades).map((item, index) => {
    const size = random.pick([1, 2.5, 5, 10]);
    const price = usualPrice(random, lines[names.indexOf(item)]!.en);
    const paid = Math.round(100 * size * price) / 100;
    return putRow(sheet, 2 + index, 0, [item, shown(size, "0.0"), shown(paid, "0.00")]);
  });
  const kilos = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/${a1({ ...spot, column: 1 })}`,
  });
  return `${sheet.name}!${absolute(span([...columnOf(rows, 0), ...kilos]))}`;
}

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierbeginn", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  {
    ...{ label: "In der Truhe (−17 °C) gefroren, vom Wasser", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -17, decimals: 0 },
  },
  { label: "Wasser in der Wanne", inCell: "g", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "Zucker auf 100 g Wasser", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "formula", format: "0.0" },
  },
  ...alcoholIn(made, "Reiner Alkohol in der Wanne (g)"),
];

/** The lines with what they cost; gives the recipe, its total and its cost. */
function priced(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, prices: string) {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Ware", "Einwaage in g", "€ je kg", "Wareneinsatz in €"],
      cells: (item, grams) => [item, grams],
    },
  );
  const kilos = beside(kit, heads[2]!, names, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=VLOOKUP(${a1(spot)},${prices},4,FALSE)`,
  });
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}/1000*${a1(kilos[index]!)}`,
  });
  put(sheet, end, 0, "Wanne gesamt");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const lines = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  return { recipe: markRecipe(kit, made, lines), total, cost };
}

/** From the tub to the cup that is sold. */
function cups(kit: Kit, sheet: CorpusSheet, total: Spot, cost: Spot): void {
  const { random } = kit;
  const at = (row: number) => [row, 5] as const;
  const filled = asked(kit, sheet, at(2), ["Becher fasst", "g", random.pick([80, 95, 120])]);
  const words = ["Becher mit Löffel (€)", random.whole(9, 16) / 100, "0.00"] as const;
  const empty = counted(sheet, at(3), words);
  const sold = counted(sheet, at(4), ["Aushang (€)", random.whole(7, 11) / 4, "0.00"]);
  const tax = counted(sheet, at(5), ["Mehrwertsteuer (%)", 7]);
  const line = (row: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, row, 5, [label, shown(formula, format)])[1]!;
  const count = line(6, "Becher je Wanne", `=${a1(total)}/${a1(filled)}`, "0.0");
  const each = line(7, "Kosten je Becher (€)", `=${a1(cost)}/${a1(count)}+${a1(empty)}`, "0.00");
  const net = line(8, "Erlös ohne Steuer (€)", `=${a1(sold)}/(1+${a1(tax)}/100)`, "0.00");
  line(9, "Rohgewinn je Becher (€)", `=${a1(net)}-${a1(each)}`, "0.00");
  line(10, "Kosten vom Erlös (%)", `=100*${a1(each)}/${fixed(net)}`, "0");
}

/** The pool's kiosk: two flavours, their prices looked up. */
function freibad(kit: Kit): void {
  const { marked } = kit;
  const mades = kit.make(2).map((made) => called(upTo(made, 5000), { Zucker: "Haushaltszucker" }));
  const prices = groceries(kit, addSheet(marked.book, "Einkauf"), mades);
  mades.forEach((made, index) => {
    const sheet = addSheet(marked.book, ["Wanne links", "Wanne rechts"][index]!);
    put(sheet, 0, 0, `${made.title}, Kiosk im Freibad`);
    const { recipe, total, cost } = priced(kit, sheet, made, prices);
    cups(kit, sheet, total, cost);
    const next = say(sheet, recipe, { row: total.row + 4, column: 0 }, answers(made));
    nameTarget(sheet, recipe, { row: next, column: 0, label: "Soll werden" });
    const last = warnAt(sheet, recipe, { row: next + 1, column: 0 }, "Aushang Allergene:");
    note(kit, sheet, last + 1, 0, "Bei über 30 Grad zwei Wannen mehr machen.");
  });
}

/** The kiosk of a swimming pool. */
export const freibaeder: readonly Layout[] = [
  { name: "Freibad, Großmarktpreis bis Becher", language: "de", build: freibad },
];
