import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { priceFor } from "../guests/prices";
import type { MarkedRecipe } from "../marks";
import { beside, listed, type Listed } from "../newcomers/words";
import { input } from "../page";
import { about, declare, ofSpirits } from "./words";

const SOURCES: readonly (readonly [RegExp, string])[] = [
  [/^water/, "tap"],
  [/coffee/, "our machine"],
  [/milk|cream|yogurt|yolk/, "dairy round"],
  [/sugar|sucrose|monohydrate|syrup|fructose|inulin|powder|salt/, "cash & carry"],
  [/vodka|rum/, "off-licence"],
];

const boughtFrom = (name: string): string =>
  SOURCES.find(([of]) => of.test(name))?.[1] ?? "greengrocer";

/** Money and its parts beside the lines; gives the sum of the money. */
function money(kit: Kit, { sheet, heads, amounts, end }: Listed): Spot {
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 3 })}`,
  });
  const sum = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const parts = beside(kit, heads[5]!, costs, {
    ...{ sheet, format: "0", fixed: [sum] },
    content: (spot) => `=100*${a1(spot)}/${fixed(sum)}`,
  });
  sumOf(kit, sheet, { row: end, column: 5 }, parts, "0");
  return sum;
}

/** What the kitchen says of the base. */
function behaviour(sheet: CorpusSheet, recipe: MarkedRecipe, row: number, cabinet: Spot): number {
  const temperatureC = sheet.cells[cabinet.row]![cabinet.column]!.content as number;
  const next = say(sheet, recipe, { row, column: 0 }, [
    { label: "Starts to freeze at (°C)", states: "freezing point", as: "typed", decimals: 1 },
    {
      label: "Ice in the base at the cabinet's temperature (% of the base)",
      ...{ states: "ice of mix", as: "formula", temperatureC, temperature: cabinet },
    },
    { label: "Water in the base (g)", states: "water", as: "formula", format: "0" },
    { label: "All sugars in the base (%)", states: "sugar share", as: "typed" },
    ...ofSpirits(recipe.made, [
      { label: "Pure alcohol in the base (g)", states: "alcohol", as: "typed", decimals: 1 },
    ]),
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Has to be" });
  return next + 1;
}

/** A café's base for sundaes: what is bought where, what it costs, what a coupe costs. */
function coupes(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Sundae base");
  const made = called(about(kit.make(1)[0]!, 3000), {
    sugar: "granulated sugar",
    "skim milk powder": "skimmed milk powder",
  });
  put(sheet, 0, 0, `${made.title}: base for the summer coupes`);
  const portion = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{ label: "In one coupe (g)", bare: "In one coupe", value: random.pick([90, 110, 130]) },
    },
  );
  const cabinet = input(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      ...{ label: "Display cabinet (°C)", bare: "Display cabinet", value: -random.whole(11, 15) },
    },
  );
  const list = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: [
        "Goods",
        "Bought from",
        "Goes in (g)",
        "Price (£/kg)",
        "Costs us (£)",
        "% of the cost",
      ],
      cells: (name, grams) => [
        name,
        boughtFrom(name),
        grams,
        shown(priceFor(random, name), "0.00"),
      ],
      amount: 2,
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "Whole batch");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const sum = money(kit, list);
  const count = put(sheet, end + 2, 1, shown(`=${a1(total)}/${a1(portion)}`, "0"));
  put(sheet, end + 2, 0, "Coupes from one batch");
  putRow(sheet, end + 3, 0, [
    "Ice cream in one coupe (£)",
    shown(`=${a1(sum)}/${a1(count)}`, "0.00"),
  ]);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[2]!, total },
  });
  const next = behaviour(sheet, recipe, end + 5, cabinet);
  declare(sheet, recipe, { row: next, column: 0 }, "For the menu, contains:");
  note(kit, sheet, next + 2, 0, "Wafers, sauce and whipped cream are on the coffee sheet.");
}

/** A small café. */
export const coupeSheets: readonly Layout[] = [
  { name: "corner café, what a coupe costs us", language: "en", build: coupes },
];
