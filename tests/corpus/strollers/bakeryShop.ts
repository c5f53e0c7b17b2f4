import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { labelAt, labelOf, temperatures, upTo } from "./words";

interface Tab {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
  readonly cost: Spot;
  readonly name: string;
}

/** A flavour's own sheet, kilograms with the unit after each. */
function tab(kit: Kit, made: MadeRecipe, at: number): Tab {
  const name = `Mix ${at + 1}`;
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, made.title);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Weigh in", undefined, "Ingredient", "£/kg", "£"],
      cells: (item, grams) => [
        ...[shown(inUnit(grams, "kg"), "0.000"), "kg", item],
        shown(item === "water" ? 0 : kit.random.whole(70, 1500) / 100, "0.00"),
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
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unitCells: columnOf(rows, 1), unit: "kg", amountLabel: heads[0]!, total },
  });
  const next = say(sheet, recipe, { row: end + 2, column: 2 }, [
    { label: "lowers the freezing point by", inCell: "K", states: "depression", as: "formula" },
    {
      ...{ label: "dissolved in it, altogether", inCell: "g" },
      ...{ states: "dissolved", as: "typed", decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 2, label: "served as" });
  labelAt(sheet, recipe, { row: next + 2, column: 0 }, "Shelf label: contains");
  return { recipe, total, cost, name };
}

const HEADS = [
  ...["Sheet", "Flavour", "Made (kg)", "Cost (£)", "Freezing point (°C)"],
  ...["Water frozen in the display, −13 °C (%)", "Display read at noon (°C)", "To declare"],
];

/** All flavours on one page, a line for each. */
function summary(kit: Kit, sheet: CorpusSheet, tabs: readonly Tab[]): void {
  put(sheet, 0, 0, "Bakery corner, summer ices, all on one page");
  const heads = putRow(sheet, 2, 0, HEADS);
  const rows = tabs.map(({ recipe, total, cost, name }, index) => {
    const row = 3 + index;
    const made = `='${name}'!${a1(total)}`;
    const cells = [name, recipe.made.title, shown(made, "0.000")];
    const [, , kilos] = putRow(sheet, row, 0, cells);
    const pounds = put(sheet, row, 3, shown(`='${name}'!${a1(cost)}`, "0.00"));
    const lines = `'${name}'!${span(recipe.names)},'${name}'!${span(recipe.amounts)}`;
    const at = (column: number) => ({ row, column });
    const point = { states: "freezing point", as: "formula", format: "0.0" } as const;
    resultAt(sheet, recipe, heads[4]!, at(4), point, () => lines);
    const ice = { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 } as const;
    resultAt(sheet, recipe, heads[5]!, at(5), ice);
    const words = labelOf(recipe.made, "Contains");
    if (words !== "") recipe.flags.push(put(sheet, row, 7, words));
    const noon = put(sheet, row, 6, shown(-kit.random.whole(23, 29) / 2, "0.0"));
    return [kilos!, pounds, noon];
  });
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
