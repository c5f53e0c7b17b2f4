import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { labelAt, temperatures, upTo } from "./words";

interface Tab {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
  readonly cost: Spot;
  readonly name: string;
}

/** What is said under each list. */
const ANSWERS: readonly Said[] = [
  { label: "lowers the freezing point by", inCell: "K", states: "depression", as: "formula" },
  {
    ...{ label: "dissolved in it, altogether", inCell: "g" },
    ...{ states: "dissolved", as: "typed", decimals: 0 },
  },
];

const priceOf = (kit: Kit, item: string): number =>
  item === "water" ? 0 : kit.random.whole(70, 1500) / 100;

/** The list with its costs; gives the recipe and what it costs. */
function weighed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Weigh in", undefined, "Ingredient", "£/kg", "£"],
      cells: (item, grams) => [
        ...[shown(inUnit(grams, "kg"), "0.000"), "kg", item, shown(priceOf(kit, item), "0.00")],
      ],
      ...{ name: 2, amount: 0 },
    },
  );
  const { heads, rows, names, amounts, end } = list;
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts, "0.000");
  putRow(sheet, end, 1, ["kg", "in the churn"]);
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const unitCells = columnOf(rows, 1);
  const lines = { names, amounts, unitCells, unit: "kg", amountLabel: heads[0]!, total } as const;
  return { recipe: markRecipe(kit, made, lines), total, cost };
}

/** A flavour's own sheet, kilograms with the unit after each. */
function tab(kit: Kit, made: MadeRecipe, at: number): Tab {
  const name = `Mix ${at + 1}`;
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, made.title);
  const { recipe, total, cost } = weighed(kit, sheet, made);
  const next = say(sheet, recipe, { row: total.row + 2, column: 2 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 2, label: "served as" });
  labelAt(sheet, recipe, { row: next + 2, column: 0 }, "Shelf label: contains");
  return { recipe, total, cost, name };
}

const HEADS = [
  ...["Sheet", "Flavour", "Made (kg)", "Cost (£)", "Freezing point (°C)"],
  ...["Water frozen in the display, −13 °C (%)", "Display read at noon (°C)", "To declare"],
];

/** A flavour's line of the last page; gives its kilograms, cost and the display's reading. */
function line(kit: Kit, sheet: CorpusSheet, tab: Tab, row: number, heads: readonly Spot[]): Spot[] {
  const { recipe, total, cost, name } = tab;
  const made = shown(`='${name}'!${a1(total)}`, "0.000");
  const paid = shown(`='${name}'!${a1(cost)}`, "0.00");
  const [, , kilos, pounds] = putRow(sheet, row, 0, [name, recipe.made.title, made, paid]);
  const lines = `'${name}'!${span(recipe.names)},'${name}'!${span(recipe.amounts)}`;
  const at = (column: number) => ({ row, column });
  const point = { states: "freezing point", as: "formula", format: "0.0" } as const;
  resultAt(sheet, recipe, heads[4]!, at(4), point, () => lines);
  const ice = { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 } as const;
  resultAt(sheet, recipe, heads[5]!, at(5), ice);
  labelAt(sheet, recipe, at(7), "Contains");
  const noon = put(sheet, row, 6, shown(-kit.random.whole(23, 29) / 2, "0.0"));
  return [kilos!, pounds!, noon];
}

/** All flavours on one page, a line for each. */
function summary(kit: Kit, sheet: CorpusSheet, tabs: readonly Tab[]): void {
  put(sheet, 0, 0, "Bakery corner, summer ices, all on one page");
  const heads = putRow(sheet, 2, 0, HEADS);
  const rows = tabs.map((each, index) => line(kit, sheet, each, 3 + index, heads));
  temperatures(kit, heads[6]!, columnOf(rows, 2));
  const end = 3 + tabs.length;
  put(sheet, end, 1, "Week's total");
  sumOf(kit, sheet, { row: end, column: 2 }, columnOf(rows, 0), "0.000");
  sumOf(kit, sheet, { row: end, column: 3 }, columnOf(rows, 1), "0.00");
  note(kit, sheet, end + 2, 0, "Sheets are renamed when a flavour leaves the display.");
}

/** Four flavours, a sheet each, summed up on the last. */
function bakeryShop(kit: Kit): void {
  const mades = kit.make(4).map((made) => called(upTo(made, 4000), { sugar: "white sugar" }));
  const tabs = mades.map((made, index) => tab(kit, made, index));
  summary(kit, addSheet(kit.marked.book, "All flavours"), tabs);
}

/** A bakery with an ice corner. */
export const bakeryShops: readonly Layout[] = [
  { name: "bakery corner, four mixes and one page for all", language: "en", build: bakeryShop },
];
