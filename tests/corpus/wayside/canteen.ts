import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { say, sumOf, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import type { MarkedRecipe } from "../marks";
import { lineup, little, mild, PLAIN } from "./words";

const ANSWERS: readonly Said[] = [
  { label: "FP °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "dissolved, g in the 100", states: "dissolved", as: "typed", decimals: 1 },
  { label: "water, g in the 100", states: "water", as: "formula", format: "0.0" },
  {
    ...{ label: "ice in whole mix @ −18 °C, %", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -18, decimals: 0 },
  },
];

/** The recipe card: per cent, the answers right of the list. */
function card(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, also: readonly Spot[]) {
  put(sheet, 0, 0, "CARD");
  put(sheet, 0, 1, made.title);
  const { recipe } = lineup(kit, sheet, made, {
    ...{ row: 2, column: 1, heads: ["ingredient", "%"], name: 0, amount: 1 },
    cells: (name, amount) => [name, amount],
    ...{ unit: "%", format: "0.0", total: { label: "should be 100" }, also },
  });
  const next = say(sheet, recipe, { row: 3, column: 5 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "for" });
  tellIn(sheet, recipe, { row: 12, column: 1 }, PLAIN);
  return recipe;
}

/** Where a weighing sheet's lines begin. */
const FIRST = 5;

/** A kitchen's weighing sheet, which reads the card. */
function weighing(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, pupils: number): void {
  put(sheet, 1, 0, `weigh-up for ${sheet.name}`);
  const at = (row: number) => ({ row, column: 3 });
  const head = { label: "each gets (g)", bare: "each gets", value: kit.random.pick([60, 75]) };
  const each = input(kit, sheet, at(0), head);
  const count = putRow(sheet, 1, 3, ["pupils having it", pupils])[1]!;
  const [, batch] = putRow(sheet, 2, 3, ["so make (g)", `=${a1(each)}*${a1(count)}`]);
  const heads = putRow(sheet, FIRST - 1, 0, ["what", "grams", "done?"]);
  const names = recipe.names.map((name, index) =>
    put(sheet, FIRST + index, 0, `=${calledFrom(batch!, name)}`),
  );
  const grams = beside(kit, heads[1]!, names, {
    ...{ sheet, format: "0", fixed: [batch!] },
    content: (_, index) => `=${calledFrom(batch!, recipe.amounts[index]!)}/100*${fixed(batch!)}`,
  });
  const end = FIRST + names.length;
  put(sheet, end, 0, "adds to");
  sumOf(kit, sheet, { row: end, column: 1 }, grams, "0");
}

/** Deliveries, with what they came to. */
function van(kit: Kit, sheet: CorpusSheet): void {
  const items = ["tubs, 5 litre", "paper cups x 500", "lids x 500", "spoons x 1000"];
  const cells = items.map((item) => [
    ...[item, kit.random.whole(1, 4), shown(kit.random.whole(600, 2500) / 100, "0.00")],
  ]);
  const { heads, rows } = little(
    sheet,
    { row: 2, column: 0 },
    ["from the van", "no.", "£ each", "£"],
    cells,
  );
  const paid = beside(kit, heads[3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  put(sheet, 8, 0, "to the office");
  sumOf(kit, sheet, { row: 8, column: 3 }, paid, "0.00");
  note(kit, sheet, 0, 0, "nothing here is for the mix");
}

/** One card in per cent and a copy of the weighing sheet for each school. */
function canteen(kit: Kit): void {
  const own = { sugar: "caster sugar", "whole milk": "full-fat milk" };
  const made = called(stillMet(perHundred(mild(kit, 1)[0]!)), own);
  const schools: readonly (readonly [string, number])[] = [
    ["Hill Rd", kit.random.whole(40, 70)],
    ["Infants", kit.random.whole(20, 35)],
    ["Staff do", kit.random.whole(10, 18)],
  ];
  const also = schools.flatMap(([sheet]) =>
    made.names.map((_, index) => ({ sheet, row: FIRST + index, column: 1 })),
  );
  const recipe = card(kit, addSheet(kit.marked.book, "card"), made, also);
  for (const [school, pupils] of schools) {
    weighing(kit, addSheet(kit.marked.book, school), recipe, pupils);
  }
  van(kit, addSheet(kit.marked.book, "van"));
}

/** A kitchen that cooks for schools. */
export const canteens: readonly Layout[] = [
  { name: "school canteen, a card and a weighing sheet a school", language: "en", build: canteen },
];
