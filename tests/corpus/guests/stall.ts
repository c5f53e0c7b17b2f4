import {
  a1,
  addSheet,
  fixed,
  over,
  put,
  putRow,
  shown,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { called, columnOf, strip } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside } from "../newcomers/words";
import { input } from "../page";
import { massOf } from "../recipes";
import { diary } from "./diary";
import { priceFor } from "./prices";
import { times } from "./words";

const SEASONS = ["spring", "summer", "autumn"];
const FRUIT = /peach|strawberries|raspberries|blueberries|cherries|mango|banana|apple|orange|lemon/;

/** What a kilogram costs from spring to autumn; fruit moves more than the rest. */
function through(kit: Kit, name: string): number[] {
  const price = priceFor(kit.random, name);
  const moves = FRUIT.test(name) ? [1.2, 0.7, 0.95] : [1, 1, 1.04];
  return moves.map((by) => Math.round(100 * price * by) / 100);
}

/** The headings over the seasons, in two rows. */
function headings(sheet: CorpusSheet, top: number): Spot[] {
  const paid = put(sheet, top, 2, "what we pay, £ per kg");
  const costing = put(sheet, top, 5, "the batch, £");
  for (const spot of [paid, costing]) {
    sheet.merged.push(over([spot, { ...spot, column: spot.column + 2 }]));
  }
  return putRow(sheet, top + 1, 0, ["Stuff", "batch in g", ...SEASONS, ...SEASONS]);
}

/** The batch with its prices by season, and what it costs in each. */
function priced(kit: Kit, sheet: CorpusSheet, top: number) {
  const made = called(times(kit.make(1)[0]!, 3), { "whole milk": "full-fat milk" });
  const heads = headings(sheet, top);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 0, [
      ...[name, made.grams[index]],
      ...through(kit, name).map((price) => shown(price, "0.00")),
    ]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const row = top + 2 + rows.length;
  put(sheet, row, 0, "the lot");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts);
  const costs = SEASONS.map((_, at) => {
    const spots = beside(kit, heads[5 + at]!, columnOf(rows, 2 + at), {
      ...{ sheet, format: "0.00" },
      content: (spot) => `=$B${spot.row + 1}/1000*${a1(spot)}`,
    });
    return sumOf(kit, sheet, { row, column: 5 + at }, spots, "0.00");
  });
  const lines = { names, amounts, amountLabel: heads[1]!, total, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, lines), costs, row };
}

/** Litres and tubs of the batch, season by season under its costs. */
function litres(kit: Kit, sheet: CorpusSheet, costs: readonly Spot[], top: number, grams: number) {
  const made = Math.round(grams / 80) / 10;
  const words = { label: "Comes out of the machine, litres", bare: "Comes out of the machine" };
  const volume = input(kit, sheet, { row: top, column: 0 }, { ...words, value: made });
  const size = { label: "Tub, ml", bare: "Tub", value: kit.random.pick([100, 120, 150]) };
  const tub = input(kit, sheet, { row: top + 1, column: 0 }, size);
  const [, packing] = putRow(sheet, top + 2, 0, ["Tub, lid and spoon, £", 0.19]) as [Spot, Spot];
  const [, asked] = putRow(sheet, top + 3, 0, ["We ask, £ a tub", 3.2]) as [Spot, Spot];
  const line = (at: number, label: string, formula: (cost: Spot, each: Spot) => string): Spot[] => {
    put(sheet, top + at, 4, label);
    return costs.map((cost) => {
      const spot = { ...cost, row: top + at };
      const above = { ...spot, row: spot.row - 1 };
      return put(sheet, spot.row, spot.column, shown(formula(cost, above), "0.00"));
    });
  };
  line(0, "£ per litre", (cost) => `=${a1(cost)}/${fixed(volume)}`);
  const inTub = (_: Spot, above: Spot) => `=${a1(above)}*${fixed(tub)}/1000+${fixed(packing)}`;
  line(1, "£ per tub", inTub);
  line(2, "left on a tub, £", (_, above) => `=${fixed(asked)}-${a1(above)}`);
}

/** What the mix is like, over the prices. */
function character(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe): void {
  const temperatureC = kit.random.pick([-14, -16, -18]);
  const cart = { label: "cart kept at (°C)", bare: "cart kept at", value: temperatureC };
  const temperature = input(kit, sheet, { row: 4, column: 3 }, cart);
  strip(sheet, recipe, { row: 2, column: 0 }, [
    { label: "freezing point (°C)", states: "freezing point", as: "typed", decimals: 1 },
    {
      ...{ label: "ice in the mix, in the cart (%)", states: "ice of mix", as: "formula" },
      ...{ temperature, temperatureC, format: "0" },
    },
    {
      ...{ label: "sugars to 100 g water (g)", states: "sugar per 100 g water" },
      ...{ as: "typed", decimals: 0 },
    },
    { label: "water in a batch (g)", states: "water", as: "typed", decimals: 0 },
    { label: "alcohol in a batch (g)", states: "alcohol", as: "typed", decimals: 0 },
  ]);
  nameTarget(sheet, recipe, { row: 4, column: 0, label: "sold as" });
}

/** One batch through the seasons. */
function seasons(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Per litre");
  const { recipe, costs, row } = priced(kit, sheet, 6);
  put(sheet, 0, 0, `${recipe.made.title}: what a litre costs through the year`);
  character(kit, sheet, recipe);
  litres(kit, sheet, costs, row + 2, massOf(recipe.made));
  const next = tell(kit, sheet, recipe, { row: row + 7, column: 0, as: "sentence" });
  const text = "Prices off the cash and carry slips; fruit is from the pick-your-own.";
  note(kit, sheet, next + 1, 0, text);
}

/** Sheets of someone with a stall on the market. */
export const stall: readonly Layout[] = [
  { name: "market trader, a litre through the seasons", language: "en", build: seasons },
  { name: "market trader, diary of market days", language: "en", build: diary },
];
