import { a1, addSheet, fixed, put, putRow, shown, span, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { onSheet } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { beside } from "../newcomers/words";
import { itemsOf, temperatures } from "../strollers/words";
import { inEnglish, ownList, type OwnList } from "./words";

const HEADS = ["Ref", "Material", "Mass, g", "Mass, %"];

/** One mix of the book under those before it. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, index: number, row: number): OwnList {
  put(sheet, row, 0, `${index + 1}. ${made.title}`);
  const list = ownList(
    kit,
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: HEADS,
      cells: (item, grams, at) => [`${index + 1}${"abcdefgh"[at] ?? "z"}`, item, grams],
      ...{ name: 1, amount: 2, unit: "g", total: "Mix" },
      also: ({ heads, amounts }, total) =>
        beside(kit, heads[3]!, amounts, {
          ...{ sheet, format: "0.0", fixed: [total] },
          content: (spot) => `=100*${a1(spot)}/${fixed(total)}`,
        }),
    },
  );
  const { recipe, end } = list;
  sumOf(kit, sheet, { row: end, column: 3 }, recipe.alsoAmounts, "0.0");
  tellIn(sheet, recipe, { row: end + 1, column: 1 }, inEnglish("Declare:"));
  return list;
}

const GLANCE = [
  ...["Mix", "Yield, g", "Freezing point, °C", "Depression, K", "Total water, g"],
  ...["Ice of the mix in the cabinet, %", "Texture", "Draw temp., °C"],
];

const PLANS: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula" },
  { states: "depression", as: "typed" },
  { states: "water", as: "formula", format: "0" },
];

/** A line of the overview for each mix. */
function glance(kit: Kit, sheet: CorpusSheet, lists: readonly OwnList[]): void {
  const temperatureC = kit.random.pick([-12, -13, -15]);
  put(sheet, 0, 0, "All mixes at a glance");
  const words = { label: "Cabinet set to (°C)", bare: "Cabinet set to", value: temperatureC };
  const temperature = input(kit, sheet, { row: 1, column: 0 }, words);
  const heads = putRow(sheet, 3, 0, GLANCE);
  const linesOf = onSheet("Mixes", span);
  const ice = { states: "ice of mix", as: "formula", temperature, temperatureC } as const;
  const rows = lists.map(({ recipe, total }, index) => {
    const row = 4 + index;
    putRow(sheet, row, 0, [recipe.made.title, `=Mixes!${a1(total)}`]);
    [...PLANS, { ...ice, format: "0.0" }].forEach((plan, at) =>
      resultAt(sheet, recipe, heads[2 + at]!, { row, column: 2 + at }, plan, linesOf),
    );
    nameTarget(sheet, recipe, { row, column: 6 });
    return put(sheet, row, 7, shown(-kit.random.whole(10, 14) / 2, "0.0"));
  });
  temperatures(kit, heads[7]!, rows);
  note(kit, sheet, 5 + lists.length, 0, "Draw temperatures from the last clean run of each mix.");
}

/** What stands in the dry store. */
function store(kit: Kit, sheet: CorpusSheet, lists: readonly OwnList[]): void {
  const all = itemsOf(lists.map(({ recipe }) => recipe.made));
  const names = all.filter((name) => name !== "water");
  putRow(sheet, 0, 0, ["Material", "On hand, kg", "Reorder below, kg", "Supplier"]);
  const rows = names.map((name, index) =>
    putRow(sheet, 1 + index, 0, [
      ...[name, kit.random.whole(2, 60) / 2, kit.random.whole(1, 5)],
      kit.random.pick(["valley", "co-op", "import"]),
    ]),
  );
  put(sheet, 1 + names.length, 0, "Stock in all, kg");
  sumOf(kit, sheet, { row: 1 + names.length, column: 1 }, columnOf(rows, 1), "0.0");
}

/** Four mixes one below the other, answers on another sheet, the store on a third. */
function book(kit: Kit): void {
  const own = { "whole milk": "whole milk 3.5 % fat", sugar: "granulated sugar" };
  const sheet = addSheet(kit.marked.book, "Mixes");
  let row = 0;
  const lists = kit.make(4).map((made, index) => {
    const list = mix(kit, sheet, called(made, own), index, row);
    row = list.end + 3;
    return list;
  });
  glance(kit, addSheet(kit.marked.book, "Glance"), lists);
  store(kit, addSheet(kit.marked.book, "Dry store"), lists);
}

/** A creamery's book of mixes. */
export const mixBook: readonly Layout[] = [
  { name: "creamery mix book, answers on a sheet of their own", language: "en", build: book },
];
