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
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { markFormulas, placesOf, tellIn, type Answer } from "./columns";
import { priceOf } from "./prices";

interface Shop {
  readonly names: readonly Spot[];
  readonly prices: readonly Spot[];
}

/** The words of the buckets' sheet: names at the left, prices at the right. */
function shopOf({ random }: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Shop {
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  const right = 1 + mades.length;
  put(sheet, 0, 0, "One bucket of each");
  put(sheet, 1, 0, "Ingredient");
  put(sheet, 1, right, "€ per kg");
  ["Bucket", "Costs (€)"].forEach((label, at) => put(sheet, 2 + items.length + at, 0, label));
  const names = items.map((item, index) => put(sheet, 2 + index, 0, item));
  const prices = items.map((item, index) =>
    put(sheet, 2 + index, right, shown(priceOf(random, item), "0.00")),
  );
  return { names, prices };
}

/** One flavour's bucket in its column, in kilograms, what it costs at the foot. */
function bucket(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, shop: Shop) {
  const { names, prices } = shop;
  const heading = put(sheet, 1, column, `${made.title} (kg)`);
  const at = placesOf(sheet, names, made.names);
  const amounts = at.map((item, index) =>
    put(sheet, 2 + item, column, shown(inUnit(made.grams[index]!, "kg"), "0.000")),
  );
  const all = names.map((spot) => ({ ...spot, column }));
  const row = 2 + names.length;
  const total = sumOf(kit, sheet, { row, column }, all, "0.000");
  const sum = `=SUMPRODUCT(${span(all)},${absolute(span(prices))})`;
  const cost = put(sheet, row + 1, column, shown(sum, "0.00"));
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((item) => names[item]!), amounts, unit: "kg", total, shared: true },
    amountLabel: heading,
  });
  return { recipe, total, cost };
}

const BOARD: readonly Answer[] = [
  ["Freezing point (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Freezing point lowered by (K)", { states: "depression", as: "typed", decimals: 1 }],
  ["Ice at −20 °C (% of the mix)", { states: "ice of mix", as: "typed", temperatureC: -20 }],
  ["Sugars (% of the mix)", { states: "sugar share", as: "typed" }],
  ["Alcohol in a bucket (g)", { states: "alcohol", as: "typed", decimals: 1 }],
];

const HEADS = ["Flavour", "Pops", "Cost of a pop (€)", "Price (€)", "Left over (€)"];

interface Line {
  readonly row: number;
  readonly pop: Spot;
  readonly total: Spot;
  readonly cost: Spot;
}

/** A flavour's line on the board: pops and money, then what we know of the mix. */
function line(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, plan: Line): Spot[] {
  const { row, pop, total, cost } = plan;
  const { made } = recipe;
  put(sheet, row, 0, made.title);
  const count = `=1000*Buckets!${a1(total)}/${fixed(pop)}`;
  const pops = put(sheet, row, 1, shown(count, "0"));
  const each = put(sheet, row, 2, shown(`=Buckets!${a1(cost)}/${a1(pops)}`, "0.00"));
  const price = put(sheet, row, 3, shown(kit.random.pick([2, 2.2, 2.5, 2.8]), "0.00"));
  const left = put(sheet, row, 4, shown(`=${a1(price)}-${a1(each)}`, "0.00"));
  BOARD.forEach(([, result], index) => {
    const column = 5 + index;
    const label = { sheet: sheet.name, row: 3, column };
    resultAt(sheet, recipe, label, { row, column }, result);
  });
  nameTarget(sheet, recipe, { row, column: 5 + BOARD.length });
  tellIn(sheet, recipe, { row, column: 6 + BOARD.length }, "Contains");
  return [left];
}

/** Buckets by flavour on one sheet, the board with a line for each on another. */
export function buckets(kit: Kit): void {
  const { marked, random } = kit;
  const [board, sheet] = [addSheet(marked.book, "Board"), addSheet(marked.book, "Buckets")];
  put(board, 0, 0, "Kiosk by the pond, what we sell in July");
  const words = { label: "A pop holds (g)", bare: "A pop holds", value: random.pick([65, 80]) };
  const pop = input(kit, board, { row: 1, column: 0 }, words);
  const heads = putRow(board, 3, 0, [...HEADS, ...BOARD.map(([label]) => label)]);
  putRow(board, 3, 5 + BOARD.length, ["Should be", "Has to be said"]);
  const mades = kit.make(5);
  const shop = shopOf(kit, sheet, mades);
  const rows = mades.map((made, index) => {
    const { recipe, total, cost } = bucket(kit, sheet, made, 1 + index, shop);
    return line(kit, board, recipe, { row: 4 + index, pop, total, cost });
  });
  markFormulas(kit, rows, [heads[4]!]);
  note(kit, board, 10, 0, "Rainy days: half the buckets, the chest is full anyway.");
}
