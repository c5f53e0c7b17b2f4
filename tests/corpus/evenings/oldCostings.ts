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
import { itemsOf, ofAlcohol } from "../strollers/words";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, sumOf, type Place, type Said } from "../layouts/parts";
import { formulas } from "../layouts/marking";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { stock } from "../stock";
import { usualPrice } from "../unseen/shared";
import { VOICES } from "./voices";
import { iceOn } from "./words";

interface Costed {
  readonly title: string;
  readonly made: Spot;
  readonly cost: Spot;
}

/** The English word by which a price is known. */
const priced = (mades: readonly MadeRecipe[], item: string): string => {
  const made = mades.find(({ names }) => names.includes(item))!;
  return made.lines[made.names.indexOf(item)]?.en ?? item;
};

/** What the shops asked; gives the cells in which names are looked up. */
function bought(kit: Kit, mades: readonly MadeRecipe[]): string {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Shopping");
  put(sheet, 0, 0, "What I pay, supermarket and wholesaler mixed");
  const heads = putRow(sheet, 2, 0, ["What", "Pack (kg)", "Paid (£)", "£ per kg"]);
  const items = itemsOf(mades);
  const rows = items.map((item, index) => {
    const pack = random.pick([0.5, 1, 1, 2, 5]);
    const paid = Math.max(0.01, usualPrice(random, priced(mades, item)) * pack);
    return putRow(sheet, 3 + index, 0, [item, pack, shown(Number(paid.toFixed(2)), "0.00")]);
  });
  const perKilo = rows.map(([, pack, paid]) => shown(`=${a1(paid!)}/${a1(pack!)}`, "0.00"));
  const last = formulas(kit, heads[3]!, perKilo, { sheet, at: [3, 3] });
  note(kit, sheet, 4 + rows.length, 0, "Check again before the Christmas course.");
  return `Shopping!${absolute(span([...columnOf(rows, 0), ...last]))}`;
}

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "Freezing point (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water (g)", states: "water", as: "formula", format: "0" },
  { label: "Sugars, % of the mix", states: "sugar share", as: "typed", decimals: 0 },
  {
    label: "Ice at −14 °C, % of the mix",
    ...{ states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  },
  ...ofAlcohol(made, "Alcohol (g)"),
];

/** One costing in its block. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, place: Place, book: string): Costed {
  const { row, column } = place;
  put(sheet, row, column, made.title);
  const { list, recipe } = iceOn(kit, sheet, made, {
    ...{ row: row + 1, column, columns: ["name", "amount", "price", "cost"], unit: "g" },
    ...{ headings: { name: "Ingredient", amount: "g", price: "£/kg", cost: "£" }, total: "Total" },
    priceOf: (name) => shown(`=VLOOKUP(${a1(name)},${book},4,FALSE)`, "0.00"),
    ...{ said: said(made), target: "Made for", voice: VOICES.stall },
  });
  const cost = { sheet: sheet.name, row: list.totalRow, column: column + 3 };
  return { title: made.title, made: recipe.total!, cost };
}

/** What a portion of each costs. */
function portions(kit: Kit, sheet: CorpusSheet, costed: readonly Costed[], from: string): void {
  put(sheet, 0, 0, "Per portion");
  const words = { label: "Portion (g)", bare: "Portion", value: kit.random.pick([70, 80, 90]) };
  const portion = input(kit, sheet, { row: 1, column: 0 }, words);
  const names = ["Ice", "Batch (g)", "Batch (£)", "Portions", "£ each", "Asked (£)"];
  const heads = putRow(sheet, 3, 0, names);
  const rows = costed.map(({ title, made, cost }, index) =>
    putRow(sheet, 4 + index, 0, [
      ...[title, `='${from}'!${a1(made)}`, shown(`='${from}'!${a1(cost)}`, "0.00")],
      ...[undefined, undefined, shown(kit.random.whole(9, 16) / 4, "0.00")],
    ]),
  );
  const counts = rows.map(([, made]) => shown(`=${a1(made!)}/${fixed(portion)}`, "0.0"));
  const count = formulas(kit, heads[3]!, counts, { sheet, at: [4, 3], fixed: [portion] });
  const each = rows.map(([, , cost], index) => shown(`=${a1(cost!)}/${a1(count[index]!)}`, "0.00"));
  formulas(kit, heads[4]!, each, { sheet, at: [4, 4] });
  const end = 4 + rows.length;
  put(sheet, end, 0, "All batches");
  [1, 2].forEach((at) => sumOf(kit, sheet, { row: end, column: at }, columnOf(rows, at)));
  note(kit, sheet, end + 2, 0, "Tubs, spoons and fuel not counted.");
}

/** Costings two and two beside each other, prices and portions on other sheets. */
function costings(kit: Kit): void {
  const { book } = kit.marked;
  const words = { sugar: "granulated sugar", "skim milk powder": "skimmed milk powder" };
  const mades = kit.make(4).map((made) => called(made, words));
  const sheet = addSheet(book, "Costings");
  put(sheet, 0, 0, "Costings for the stall and the workshops, begun years ago");
  const lookup = bought(kit, mades);
  const deepest = Math.max(...stock.map(({ lines }) => lines.length)) + 15;
  const costed = mades.map((made, index) => {
    const place = { row: 2 + deepest * Math.floor(index / 2), column: 5 * (index % 2) };
    return block(kit, sheet, made, place, lookup);
  });
  portions(kit, addSheet(book, "Portions"), costed, sheet.name);
}

/** A costing workbook kept for years. */
export const oldCostings: readonly Layout[] = [
  {
    name: "workshop costings, two beside two with a shopping list",
    language: "en",
    build: costings,
  },
];
