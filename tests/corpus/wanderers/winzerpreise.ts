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
import { called } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { itemsOf, madeOf, ofAlcohol, upTo } from "../strollers/words";
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

const PLAN = {
  heads: ["Zutat", "Menge kg", "EUR/kg", "EUR", "% der Kosten"],
  cells: (name: string, grams: number) => [name, shown(inUnit(grams, "kg"), "0.000")],
};

/** Kilograms with prices that are looked up. */
function costed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, table: string): Costed {
  const list = listed(sheet, made, { row: 2, column: 0 }, PLAN);
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

/** What a glass takes, what is lost, what the menu asks for it. */
function given(kit: Kit, sheet: CorpusSheet, row: number): Spot[] {
  const { random } = kit;
  const plans = [
    ["Sorbet im Glas (g)", "Sorbet im Glas", random.pick([60, 75, 90])],
    ["bleibt hängen (%)", "bleibt hängen", random.whole(2, 5)],
  ] as const;
  const inputs = plans.map(([label, bare, value], index) =>
    input(kit, sheet, { row: row + index, column: 0 }, { label, bare, value }),
  );
  const price = shown(random.whole(32, 52) / 10, "0.00");
  return [...inputs, putRow(sheet, row + 2, 0, ["Kartenpreis netto (EUR)", price])[1]!];
}

/** From the mix to a glass on the menu; gives the next free row. */
function perGlass(kit: Kit, sheet: CorpusSheet, { total, cost }: Costed): number {
  const top = total.row + 2;
  const [glass, lost, price] = given(kit, sheet, top).map(a1) as [string, string, string];
  const next = (step: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, top + step, 0, [label, shown(formula, format)])[1]!;
  const usable = `=${a1(total)}*1000*(1-${lost}/100)/${glass}`;
  const glasses = next(3, "Gläser", usable, "0.0");
  const single = `=${a1(cost)}/${a1(glasses)}`;
  const one = next(4, "Wareneinsatz im Glas (EUR)", single, "0.00");
  next(5, "Wareneinsatz vom Kartenpreis", `=${a1(one)}/${price}`, "0.0%");
  return top + 7;
}

const isFruity = ({ lines }: MadeRecipe): boolean =>
  lines.every(({ allergen }) => allergen?.en !== "milk");

/** Two mixes down to the glass, a sheet each, prices and juices on their own. */
function menu(kit: Kit): void {
  const mades = madeOf(kit, 2, isFruity).map((made) =>
    called(upTo(made, 3000), { Wasser: "Leitungswasser" }),
  );
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
