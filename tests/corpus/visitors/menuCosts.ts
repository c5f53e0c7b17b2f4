import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { absolute, markRecipe, say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { called, columnOf } from "../kitchens/hand";
import { bought, temperatures } from "./lines";
import { listed } from "./listed";

/** What the goods cost by the kilogram; gives the prices and the names to look for. */
function goods(kit: Kit, mades: readonly MadeRecipe[]): readonly [prices: string, names: string] {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Goods in");
  putRow(sheet, 0, 0, ["€/kg", "Goods", "Supplier"]);
  const wanted = [...new Set(mades.flatMap(({ names }) => names))].sort();
  const rows = wanted.map((name, index) => {
    const [price, from] = bought(random, name);
    return putRow(sheet, 1 + index, 0, [shown(price, "0.00"), name, from]);
  });
  return [0, 1].map((at) => `'Goods in'!${absolute(span(columnOf(rows, at)))}`) as [string, string];
}

interface Dish {
  readonly top: number;
  readonly goods: readonly [prices: string, names: string];
  readonly portion: Spot;
}

/** What the lines of a dish cost; gives the sum. */
function costs(kit: Kit, names: readonly Spot[], amounts: readonly Spot[], dish: Dish): Spot {
  const sheet = kit.marked.book.sheets[0]!;
  const [prices, list] = dish.goods;
  const spots = amounts.map((spot, index) => {
    const found = `=INDEX(${prices},MATCH(${a1(names[index]!)},${list},0))`;
    const price = put(sheet, spot.row, 3, shown(found, "0.00"));
    return put(sheet, spot.row, 4, shown(`=${a1(price)}*${a1(spot)}`, "0.00"));
  });
  const heading = { sheet: sheet.name, row: dish.top + 1, column: 4 };
  kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
  return sumOf(kit, sheet, { row: amounts.at(-1)!.row + 1, column: 4 }, spots, "0.00");
}

/** What a dish is like; gives the next free row. */
function dishAnswers(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  const next = say(sheet, recipe, { row, column: 0 }, [
    { label: "Freezing point", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Sugars in the mix", inCell: "% by weight", states: "sugar share", as: "typed" },
    {
      ...{ label: "Ice in the mix at −16 °C", inCell: "%" },
      ...{ states: "ice of mix", as: "typed", temperatureC: -16 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Style" });
  return tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "pair" }) + 1;
}

/** One dish of the menu, its answers under it; gives the next free row. */
function dish(kit: Kit, made: MadeRecipe, plan: Dish): number {
  const { top, portion } = plan;
  const sheet = kit.marked.book.sheets[0]!;
  put(sheet, top, 0, made.title);
  const { heads, rows, names, amounts, total, row } = listed(kit, sheet, made, {
    ...{ top: top + 1, left: 0, name: 0, amount: 1, sum: "Batch", format: "0.000" },
    headings: ["Item", "Qty", "Unit", "€/kg", "Cost (€)"],
    line: (at) => [made.names[at], shown(inUnit(made.grams[at]!, "kg"), "0.000"), "kg"],
  });
  put(sheet, row, 2, "kg");
  const cost = costs(kit, names, amounts, plan);
  const each = `=${a1(cost)}/(${a1(total)}*1000/${a1(portion)})`;
  putRow(sheet, row + 2, 0, ["Ingredients for one portion cost (€)", shown(each, "0.00")]);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unitCells: columnOf(rows, 2), unit: "kg", total },
    amountLabel: heads[1]!,
  });
  return dishAnswers(kit, sheet, recipe, row + 3);
}

const SHIFTS = ["Mon early", "Mon late", "Tue early", "Tue late", "Wed early", "Wed late"];

/** The freezers, read twice a day. */
function freezers(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 0, 0, ["Freezer check, to be signed"]);
  const headings = ["Shift", "Upright freezer (°C)", "Service drawer (°C)", "Initials"];
  const heads = putRow(sheet, 2, 0, headings);
  SHIFTS.forEach((shift, index) => put(sheet, 3 + index, 0, shift));
  temperatures(kit, sheet, { heading: heads[1]!, count: SHIFTS.length }, [-22, -18]);
  temperatures(kit, sheet, { heading: heads[2]!, count: SHIFTS.length }, [-14, -10]);
}

/** Two dishes of the menu one below the other with their costs, prices on a sheet of their own. */
export function menuCosts(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Menu costs");
  put(sheet, 0, 0, "Dessert menu: what the ices cost us");
  const place = { row: 1, column: 0 };
  const words = { label: "Portion (g)", bare: "Portion", value: kit.random.pick([55, 70, 85]) };
  const portion = input(kit, sheet, place, words);
  const own = { sugar: "granulated sugar", "skim milk powder": "skimmed milk powder" };
  const mades = kit.make(2).map((made) => called(made, own));
  const list = goods(kit, mades);
  let top = 3;
  for (const made of mades) top = dish(kit, made, { top, goods: list, portion }) + 1;
  note(kit, sheet, top, 0, "Garnish, sauce and biscuit are costed on the pastry sheet.");
  freezers(kit, addSheet(kit.marked.book, "Freezers"));
}
