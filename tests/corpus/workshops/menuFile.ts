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
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { ofAlcohol, temperatures } from "../strollers/words";
import { rowsOf, WARNS } from "./words";

interface Dish {
  readonly recipe: MarkedRecipe;
  readonly tab: string;
  readonly plates: Spot;
}

const KNOWN: readonly Said[] = [
  { label: "Depression (K)", states: "depression", as: "formula" },
  { label: "Water, from everything (g)", states: "water", as: "formula", format: "0" },
  { label: "Sugars, % of the weight", states: "sugar share", as: "typed", decimals: 1 },
];

const METHOD = ["Weigh, warm and dissolve.", "Chill over ice.", "Churn and pack.", "Label."];

/** A dessert's own page: quantity and unit before the name, the method at the right. */
function page(kit: Kit, made: MadeRecipe, at: number): Dish {
  const tab = `Dish ${at + 1}`;
  const sheet = addSheet(kit.marked.book, tab);
  put(sheet, 0, 0, `Dessert ${at + 1}`);
  put(sheet, 1, 0, made.title);
  const plates = putRow(sheet, 2, 0, ["Plates from this", kit.random.whole(9, 24)])[1]!;
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Qty", "Unit", "What", "A plate gets (g)"],
      cells: (name, grams) => [grams, "g", name],
      ...{ name: 2, amount: 0 },
    },
  );
  const each = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [plates] },
    content: (spot) => `=${a1(spot)}/${fixed(plates)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  putRow(sheet, end, 1, ["g", "yield"]);
  sumOf(kit, sheet, { row: end, column: 3 }, each, "0.0");
  const unitCells = columnOf(rows, 1);
  const cells = { names, amounts, unitCells, alsoAmounts: each, unit: "g", total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[0]! });
  rowsOf(sheet, { row: 4, column: 5 }, [["Method"], ...METHOD.map((words) => [words])]);
  const known = [...KNOWN, ...ofAlcohol(made, "Ethanol in the lot (g)")];
  const next = say(sheet, recipe, { row: end + 2, column: 2 }, known);
  nameTarget(sheet, recipe, { row: next, column: 2, label: "Consistency" });
  tellIn(sheet, recipe, { row: next + 1, column: 2 }, WARNS);
  return { recipe, tab, plates };
}

const HEADS = [
  ...["Page", "On the menu as", "Lot (g)", "Plates", "g a plate", "Freezing point (°C)"],
  ...["Ice in the mix at −15 °C (%)", "Drawer temp Sunday (°C)", "For the waiting staff"],
];

/** A dessert's line of the index; gives the cells of its numbers. */
function entry(kit: Kit, sheet: CorpusSheet, dish: Dish, row: number, heads: readonly Spot[]) {
  const { recipe, tab, plates } = dish;
  const [, , lot, count] = putRow(sheet, row, 0, [
    ...[tab, recipe.made.title, `='${tab}'!${a1(recipe.total!)}`, `='${tab}'!${a1(plates)}`],
  ]);
  const place = (column: number) => ({ row, column });
  const lines = `'${tab}'!${span(recipe.names)},'${tab}'!${span(recipe.amounts)}`;
  const point = { states: "freezing point", as: "formula", format: "0.0" } as const;
  resultAt(sheet, recipe, heads[5]!, place(5), point, () => lines);
  const ice = { states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 } as const;
  resultAt(sheet, recipe, heads[6]!, place(6), ice);
  const drawer = put(sheet, row, 7, shown(-kit.random.whole(140, 178) / 10, "0.0"));
  tellIn(sheet, recipe, place(8), WARNS);
  return [lot!, count!, drawer];
}

/** A restaurant's frozen desserts, the index in front. */
function menuFile(kit: Kit): void {
  const index = addSheet(kit.marked.book, "Index");
  const own = { sugar: "caster sugar", "egg yolk": "egg yolks", peach: "peaches" };
  const dishes = kit.make(4).map((made, at) => page(kit, called(made, own), at));
  put(index, 0, 0, "Frozen desserts, autumn menu. One page each, kept by the pastry section");
  const heads = putRow(index, 2, 0, HEADS);
  const rows = dishes.map((dish, at) => entry(kit, index, dish, 3 + at, heads));
  const weights = columnOf(rows, 1);
  beside(kit, heads[4]!, weights, {
    ...{ sheet: index, format: "0" },
    content: (spot) => `=${a1({ ...spot, column: 2 })}/${a1(spot)}`,
  });
  const end = 3 + dishes.length;
  put(index, end, 1, "Full service");
  sumOf(kit, index, { row: end, column: 2 }, columnOf(rows, 0));
  sumOf(kit, index, { row: end, column: 3 }, weights);
  temperatures(kit, heads[7]!, columnOf(rows, 2));
  rowsOf(index, { row: end + 3, column: 0 }, [
    ["Open", "Wed to Sun", "18:00 to 22:30"],
    ["Lunch", "Sun only", "12:00 to 15:00"],
  ]);
  note(kit, index, end + 6, 0, "Strike a page through when the dish comes off; do not delete it.");
}

/** A restaurant with a menu. */
export const menuFiles: readonly Layout[] = [
  { name: "restaurant, dessert pages with an index in front", language: "en", build: menuFile },
];
