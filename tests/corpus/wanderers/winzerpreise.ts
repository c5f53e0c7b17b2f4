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
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { itemsOf, ofAlcohol, upTo } from "../strollers/words";
import { juices } from "./saefte";
import { euros, heedAt } from "./worte";

/** The price list; gives the range in which the recipes look prices up. */
function prices(kit: Kit, names: readonly string[]): string {
  const sheet = addSheet(kit.marked.book, "Preise");
  put(sheet, 0, 0, "Einkaufspreise ohne Mehrwertsteuer");
  const heads = putRow(sheet, 2, 0, ["Artikel", "EUR je kg"]);
  const rows = [...names]
    .sort((one, other) => one.localeCompare(other, "de"))
    .map((name, at) => putRow(sheet, 3 + at, 0, [name, shown(euros(kit, name), "0.00")]));
  note(kit, sheet, 4 + rows.length, 0, "Leitungswasser rechnen wir nicht.");
  return `Preise!${absolute(span([{ ...heads[0]!, row: 3 }, ...rows.at(-1)!]))}`;
}

const SAID = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunktserniedrigung", inCell: "K", states: "depression", as: "typed" },
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "gelöst in der Mischung", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  ...ofAlcohol(made, "Alkohol in der Mischung", "g"),
  { label: "Zuckeranteil der Mischung", inCell: "%", states: "sugar share", as: "typed" },
  {
    ...{ label: "gefroren bei −15 °C, vom Wasser", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
  readonly cost: Spot;
}

/** Kilograms with prices that are looked up. */
function costed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, table: string): Costed {
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Zutat", "Menge kg", "EUR/kg", "EUR", "% der Kosten"],
      cells: (name, grams) => [name, shown(inUnit(grams, "kg"), "0.000")],
    },
  );
  const { heads, names, amounts, end } = list;
  const each = beside(kit, heads[2]!, names, {
    ...{ sheet, format: "0.00" },
    content: (name) => `=VLOOKUP(${a1(name)},${table},2,FALSE)`,
  });
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}*${a1(each[index]!)}`,
  });
  put(sheet, end, 0, "Mischung");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const shares = beside(kit, heads[4]!, costs, {
    ...{ sheet, format: "0.0%", fixed: [cost] },
    content: (spot) => `=${a1(spot)}/${fixed(cost)}`,
  });
  sumOf(kit, sheet, { row: end, column: 4 }, shares, "0.0%");
  const plan = { names, amounts, unit: "kg", amountLabel: heads[1]!, total } as const;
  return { recipe: markRecipe(kit, made, plan), total, cost };
}

/** From the mix to a glass on the menu; gives the next free row. */
function perGlass(kit: Kit, sheet: CorpusSheet, { total, cost }: Costed): number {
  const { random } = kit;
  const top = total.row + 2;
  const glass = input(
    kit,
    sheet,
    { row: top, column: 0 },
    {
      ...{ label: "Sorbet im Glas (g)", bare: "Sorbet im Glas", value: random.pick([60, 75, 90]) },
    },
  );
  const lost = input(
    kit,
    sheet,
    { row: top + 1, column: 0 },
    {
      ...{ label: "bleibt hängen (%)", bare: "bleibt hängen", value: random.whole(2, 5) },
    },
  );
  const price = putRow(sheet, top + 2, 0, [
    "Kartenpreis netto (EUR)",
    shown(random.whole(32, 52) / 10, "0.00"),
  ])[1]!;
  const usable = `=${a1(total)}*1000*(1-${a1(lost)}/100)/${a1(glass)}`;
  const glasses = putRow(sheet, top + 3, 0, ["Gläser", shown(usable, "0.0")])[1]!;
  const single = `=${a1(cost)}/${a1(glasses)}`;
  const one = putRow(sheet, top + 4, 0, ["Wareneinsatz im Glas (EUR)", shown(single, "0.00")])[1]!;
  const part = `=${a1(one)}/${a1(price)}`;
  putRow(sheet, top + 5, 0, ["Wareneinsatz vom Kartenpreis", shown(part, "0.0%")]);
  return top + 7;
}

/** Two mixes down to the glass, a sheet each, prices and juices on their own. */
function menu(kit: Kit): void {
  const mades = kit.make(2).map((made) => called(upTo(made, 3000), { Wasser: "Leitungswasser" }));
  const table = prices(kit, itemsOf(mades));
  mades.forEach((made, index) => {
    const sheet = addSheet(kit.marked.book, `Kalkulation ${"AB"[index]}`);
    put(sheet, 0, 0, made.title);
    const all = costed(kit, sheet, made, table);
    const { recipe } = all;
    let next = say(sheet, recipe, { row: perGlass(kit, sheet, all), column: 0 }, SAID(made));
    nameTarget(sheet, recipe, { row: next++, column: 0, label: "kommt auf den Tisch" });
    heedAt(sheet, recipe, { row: next, column: 0 }, "Auf der Karte vermerken:");
  });
  juices(kit);
}

/** What a winery calculates. */
export const menus: readonly Layout[] = [
  { name: "Weingut, Preise nachgeschlagen bis zum Glas", language: "de", build: menu },
];
