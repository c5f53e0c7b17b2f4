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
import { nameTarget, note, type Kit } from "../kit";
import { absolute, markRecipe, sumOf, type Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { labelWords, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { bought } from "./lines";
import { purees } from "./purees";

const TOP = 10;
const ABOVE: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["Freezing point (°C)", { states: "freezing point", as: "formula" }],
  ["Water in it (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Sugars, % of the mix", { states: "sugar share", as: "typed" }],
  ["Water frozen at −20 °C, %", { states: "ice of water", as: "typed", temperatureC: -20 }],
];

interface Shelf {
  readonly items: readonly string[];
  readonly names: readonly Spot[];
  readonly prices: readonly Spot[];
  readonly pop: Spot;
  readonly title: Spot;
}

/** What a flavour and a pop of it cost, under the pops. */
function costs(sheet: CorpusSheet, { prices }: Shelf, amounts: readonly Spot[], pops: Spot): void {
  const { row, column } = pops;
  const sum = `=SUMPRODUCT(${absolute(span(prices))},${span(amounts)})/1000`;
  const cost = put(sheet, row + 1, column, shown(sum, "0.00"));
  put(sheet, row + 2, column, shown(`=${a1(cost)}/${a1(pops)}`, "0.00"));
}

/** What the label has to say, allergens over warnings. */
function warn(sheet: CorpusSheet, { made, flags }: MarkedRecipe, { row, column }: Place): void {
  if (!made.flagged) return;
  (["allergen", "caution"] as const).forEach((which, index) => {
    const words = labelWords(made, which).join(index === 0 ? ", " : " ");
    if (words !== "") flags.push(put(sheet, row + index, column, words));
  });
}

/** One flavour down its column: answers above the amounts, pops and costs below them. */
function flavour(kit: Kit, made: MadeRecipe, column: number, shelf: Shelf): void {
  const { items, names, pop, title } = shelf;
  const sheet = kit.marked.book.sheets[0]!;
  put(sheet, 3, column, made.title);
  const at = made.names.map((each) => items.indexOf(each));
  const amounts = at.map((item, index) => put(sheet, TOP + item, column, made.grams[index]));
  const all = names.map(({ row }) => ({ sheet: sheet.name, row, column }));
  const end = TOP + items.length;
  const total = sumOf(kit, sheet, { row: end, column }, all);
  const pops = put(sheet, end + 1, column, shown(`=${a1(total)}/${fixed(pop)}`, "0"));
  costs(sheet, shelf, all, pops);
  const own = { names: at.map((item) => names[item]!), amounts, shared: true, total };
  const recipe = markRecipe(kit, made, { ...own, unit: "g", amountLabel: title });
  nameTarget(sheet, recipe, { row: 4, column });
  const lines = `${absolute(span(names))},${span(all)}`;
  ABOVE.forEach(([, plan], index) => {
    const place = { row: 5 + index, column };
    const label = { sheet: sheet.name, row: place.row, column: 0 };
    resultAt(sheet, recipe, label, place, plan, () => lines);
  });
  warn(sheet, recipe, { row: end + 5, column });
}

/** What has to be in store for one batch of each flavour, and what it costs. */
function order(kit: Kit, { names, prices }: Shelf, column: number): void {
  const sheet = kit.marked.book.sheets[0]!;
  const heads = putRow(sheet, TOP - 1, column, ["To have in store (g)", "Value (€)"]);
  const needs = names.map(({ row }) => {
    const along = Array.from({ length: column - 2 }, (_, index) => ({
      ...{ sheet: sheet.name, row, column: 2 + index },
    }));
    return sumOf(kit, sheet, { row, column }, along);
  });
  const values = needs.map((spot, index) =>
    put(sheet, spot.row, column + 1, shown(`=${a1(spot)}*${a1(prices[index]!)}/1000`, "0.00")),
  );
  [needs, values].forEach((spots, index) =>
    kit.marked.formulaColumns.push({ spots, heading: heads[index]!, fixed: [] }),
  );
  sumOf(kit, sheet, { row: TOP + names.length, column: column + 1 }, values, "0.00");
}

/** The labels at the left of the flavours. */
function labels(sheet: CorpusSheet, count: number): void {
  putRow(sheet, 3, 0, ["Flavour", "€ per kg"]);
  put(sheet, 4, 0, "Sold as");
  ABOVE.forEach(([label], index) => put(sheet, 5 + index, 0, label));
  const below = ["Batch (g)", "Pops", "Ingredients cost (€)", "That is for each pop (€)"];
  [...below, undefined, "Allergens on the label", "Warnings on the label"].forEach((label, index) =>
    put(sheet, TOP + count + index, 0, label),
  );
}

/** Flavours beside each other, a price list between the names and them. */
export function flavours(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Flavours");
  const title = put(sheet, 0, 0, "Summer flavours, grams for one batch of each");
  const words = { label: "One pop (g)", bare: "One pop", value: random.pick([70, 80]) };
  const pop = input(kit, sheet, { row: 1, column: 0 }, words);
  const mades = kit.make(4);
  const items = [...new Set(mades.flatMap(({ names }) => names))].sort();
  labels(sheet, items.length);
  const names = items.map((item, index) => put(sheet, TOP + index, 0, item));
  const prices = items.map((item, index) => {
    const [price] = bought(random, item);
    return put(sheet, TOP + index, 1, shown(price, "0.00"));
  });
  const shelf = { items, names, prices, pop, title };
  mades.forEach((made, index) => flavour(kit, made, 2 + index, shelf));
  order(kit, shelf, 2 + mades.length);
  note(kit, sheet, TOP + items.length + 8, 0, "Sticks and bags: 4 cents a pop, not in the costs.");
  purees(kit);
}
