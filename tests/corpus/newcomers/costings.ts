import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { kilos } from "../layouts/marking";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { Chance } from "../random";
import type { MadeRecipe } from "../recipes";
import { called, columnOf } from "../kitchens/hand";
import { beside, warn } from "./words";

const SERVED_WITH = [
  ["Paper cup", 0.09, 0.14],
  ["Lid", 0.03, 0.06],
  ["Wooden spoon", 0.02, 0.05],
  ["Napkin", 0.01, 0.02],
] as const;

interface Costed {
  readonly sheet: CorpusSheet;
  readonly recipe: MarkedRecipe;
  readonly mixCost: Spot;
}

/** Dollars for a kilo, roughly; fruit and all else are seven. */
const PRICES: readonly (readonly [RegExp, number])[] = [
  [/water|coffee/, 0.02],
  [/coconut|syrup/, 4.5],
  [/yogurt|yolk/, 6],
  [/powder/, 9],
  [/milk/, 1.6],
  [/cream/, 6.2],
  [/fructose|dextrose/, 4.2],
  [/sugar|sucrose|salt/, 1.5],
  [/honey|vodka|rum/, 14],
  [/nuts|pistachio|pecans/, 19],
];

function pricePerKilo(random: Chance, name: string): number {
  const usual = PRICES.find(([of]) => of.test(name))?.[1] ?? 7;
  return Number((usual * random.between(0.9, 1.1)).toFixed(2));
}

/** The mix with its prices by the kilo. */
function mixed(kit: Kit, made: MadeRecipe): Costed {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, made.title);
  putRow(sheet, 0, 0, ["COSTING", made.title]);
  const heads = putRow(sheet, 2, 0, ["Goes in", "$ per kg", "Batch (g)", "Batch ($)"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 3 + index, 0, [
      name,
      shown(pricePerKilo(random, name), "0.00"),
      made.grams[index],
    ]),
  );
  const [names, prices, amounts] = [columnOf(rows, 0), columnOf(rows, 1), columnOf(rows, 2)];
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(prices[index]!)}*${a1(spot)}/1000`,
  });
  const row = 3 + rows.length;
  put(sheet, row, 0, "Mix");
  const total = sumOf(kit, sheet, { row, column: 2 }, amounts);
  const mixCost = sumOf(kit, sheet, { row, column: 3 }, costs, "0.00");
  const amountLabel = heads[2]!;
  const recipe = markRecipe(kit, made, { names, amounts, unit: "g", amountLabel, total });
  return { sheet, recipe, mixCost };
}

/** What goes over the counter with each portion; gives the cell with what it costs for the batch. */
function servedWith(kit: Kit, sheet: CorpusSheet, top: number, portions: Spot): Spot {
  const { random } = kit;
  const heads = putRow(sheet, top, 0, ["Served with", "$ each", "Pieces", "Batch ($)"]);
  const rows = SERVED_WITH.map(([name, from, to], index) =>
    putRow(sheet, top + 1 + index, 0, [
      ...[name, shown(Number(random.between(from, to).toFixed(2)), "0.00")],
      shown(`=ROUND(${fixed(portions)},0)`, "0"),
    ]),
  );
  const costs = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(rows[index]![1]!)}*${a1(spot)}`,
  });
  const row = top + 1 + rows.length;
  put(sheet, row, 0, "Served with, all");
  return sumOf(kit, sheet, { row, column: 3 }, costs, "0.00");
}

/** From the mix to what a portion costs and earns. */
function counter(kit: Kit, { sheet, recipe, mixCost }: Costed): void {
  const { random } = kit;
  const total = recipe.total!;
  const top = total.row + 2;
  const at = (row: number) => ({ row, column: 0 });
  const one = { label: "Portion (g)", bare: "Portion", value: random.pick([70, 80, 95, 110]) };
  const portion = input(kit, sheet, at(top), one);
  const count = shown(`=${a1(total)}/${a1(portion)}`, "0.0");
  const portions = putRow(sheet, top + 1, 0, ["Portions from the batch", count])[1]!;
  const extras = servedWith(kit, sheet, top + 3, portions);
  const line = (down: number, label: string, content: number | string, format = "0.00"): Spot =>
    putRow(sheet, extras.row + down, 0, [label, shown(content, format)])[1]!;
  const hours = line(2, "Labour for the batch (h)", random.pick([0.5, 0.75, 1, 1.25]));
  const wage = line(3, "Wage ($/h)", random.whole(48, 60) / 2);
  const sum = `=${a1(mixCost)}+${a1(extras)}+${a1(hours)}*${a1(wage)}`;
  const all = line(4, "Batch, everything ($)", sum);
  const each = line(5, "A portion costs us ($)", `=${a1(all)}/${a1(portions)}`);
  const price = line(6, "On the board ($)", random.whole(9, 14) / 2);
  line(7, "Cost as a part of the price", `=${a1(each)}/${a1(price)}`, "0%");
  const next = warn(sheet, recipe, at(extras.row + 9), "Counter card: contains");
  note(kit, sheet, next, 0, `Prices from the ${random.pick(["March", "April"])} invoices.`);
}

/** A product on a sheet of its own. */
function product(kit: Kit, given: MadeRecipe): void {
  const batch = kilos(given, kit.random.pick([3, 4, 5]));
  const made = called(batch, { sugar: "white sugar", water: "tap water" });
  const costed = mixed(kit, made);
  const { sheet, recipe } = costed;
  const next = say(sheet, recipe, { row: 2, column: 5 }, [
    {
      label: "Mix starts to freeze at",
      inCell: "°C",
      states: "freezing point",
      as: "typed",
      decimals: 1,
    },
    { label: "Water, from everything", inCell: "g", states: "water", as: "typed", decimals: 0 },
    { label: "Sugar content by weight", inCell: "%", states: "sugar share", as: "typed" },
    {
      ...{ label: "Water frozen in the cabinet at −14 °C", inCell: "%" },
      ...{ states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Should be" });
  counter(kit, costed);
}

/** What things cost in a shop. */
export const costings: readonly Layout[] = [
  {
    ...{ name: "two products costed to the portion", language: "en" },
    build: (kit) => {
      for (const made of kit.make(2)) product(kit, made);
    },
  },
];
