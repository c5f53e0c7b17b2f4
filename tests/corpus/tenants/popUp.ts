import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { ofSpirit, perKilo, readings, tellInRows, tellOnce, timesTo } from "./words";

const NAMES = ["Course 1", "Course 2", "Course 3"];

const said = (made: MadeRecipe): Said[] => [
  { label: "depression (K)", states: "depression", as: "formula" },
  { label: "sugars, g per 100 g of water", states: "sugar per 100 g water", as: "typed" },
  {
    ...{ label: "share of the water that is ice at −20 °C (%)", states: "ice of water" },
    ...{ as: "typed", temperatureC: -20, decimals: 0 },
  },
  ...ofSpirit(made, { label: "alcohol (g)" }),
];

interface Course {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
  readonly cost: Spot;
}

/** What goes into a dish and what it costs, the sums over the list. */
function weighed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Course {
  const place = { row: 4, column: 0 };
  const price = (index: number) => perKilo(kit.random, made.lines[index]!.en);
  const { heads, rows, names, amounts } = listed(sheet, made, place, {
    heads: ["item", "grams", "$ a kilo", "$"],
    cells: (name, grams, index) => [name, grams, shown(price(index), "0.00")],
  });
  const costs = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (kilo, index) => `=${a1(amounts[index]!)}/1000*${a1(kilo)}`,
  });
  put(sheet, 2, 0, "everything");
  const total = sumOf(kit, sheet, { row: 2, column: 1 }, amounts);
  const cost = sumOf(kit, sheet, { row: 2, column: 3 }, costs, "0.00");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, total, amountLabel: heads[1]!, unit: "g" },
  });
  return { recipe, total, cost };
}

/** A dish on its sheet. */
function course(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Course {
  put(sheet, 0, 0, made.title);
  const dish = weighed(kit, sheet, made);
  const { recipe } = dish;
  const row = recipe.names.at(-1)!.row + 2;
  const next = say(sheet, recipe, { row, column: 0 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "plated" });
  tellInRows(sheet, recipe, { row: next + 1, column: 0 }, "contains");
  return dish;
}

const HEADS = [
  ...["Course", "Dish", "Batch (g)", "Cost ($)", "Freezing point (°C)", "Water (g)"],
  ...["Ice at −14 °C (% of the mix)", "Plate freezer at six (°C)", "Tell the guests"],
];

/** A dish in its row of the front page. */
function line(kit: Kit, front: CorpusSheet, dish: Course, row: number, heads: readonly Spot[]) {
  const { recipe, total, cost } = dish;
  const tab = `'${total.sheet}'!`;
  const mass = `=${tab}${a1(total)}`;
  const paid = shown(`=${tab}${a1(cost)}`, "0.00");
  const cells = putRow(front, row, 0, [total.sheet, recipe.made.title, mass, paid]);
  const lines = `${tab}${span(recipe.names)},${tab}${span(recipe.amounts)}`;
  const at = (column: number) => ({ row, column });
  const point = { states: "freezing point", as: "formula", format: "0.0" } as const;
  resultAt(front, recipe, heads[4]!, at(4), point, () => lines);
  const water = { states: "water", as: "typed", decimals: 0 } as const;
  resultAt(front, recipe, heads[5]!, at(5), water);
  const ice = { states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 } as const;
  resultAt(front, recipe, heads[6]!, at(6), ice);
  const read = put(front, row, 7, shown(-kit.random.whole(24, 34) / 2, "0.0"));
  tellOnce(front, recipe, at(8), "Contains");
  return [cells[2]!, cells[3]!, read];
}

/** A front page, then a sheet for each of the dishes. */
function popUp(kit: Kit): void {
  const { marked } = kit;
  const front = addSheet(marked.book, "Tonight");
  put(front, 0, 0, "Pop-up dessert bar, three frozen courses");
  const heads = putRow(front, 2, 0, HEADS);
  const mades = kit.make(3).map((made) => called(timesTo(made, 2500), { sugar: "white sugar" }));
  const dishes = mades.map((made, at) => course(kit, addSheet(marked.book, NAMES[at]!), made));
  const rows = dishes.map((dish, index) => line(kit, front, dish, 3 + index, heads));
  readings(kit, heads[7]!, columnOf(rows, 2));
  put(front, 6, 1, "Whole evening");
  sumOf(kit, front, { row: 6, column: 2 }, columnOf(rows, 0));
  sumOf(kit, front, { row: 6, column: 3 }, columnOf(rows, 1), "0.00");
  note(kit, front, 8, 0, "Doors at seven, first plate out by half past.");
}

/** A dessert bar for a few evenings. */
export const popUps: readonly Layout[] = [
  { name: "pop-up dessert bar, a front page and its courses", language: "en", build: popUp },
];
