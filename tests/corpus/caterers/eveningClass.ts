import { a1, addSheet, calledFrom, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { given } from "../lodgers/words";
import { formulaColumn, perKilo } from "../pilgrims/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf } from "../strollers/words";
import { alongRow, tellIn, type Voice } from "./words";

const VOICE: Voice = {
  lead: "has",
  honey: "Honey, so nothing for infants under 12 months.",
  alcohol: "Alcohol: not for children, not if pregnant, not if driving.",
  nuts: "Whole nuts can choke small children, none for the under-fives.",
  egg: "Raw yolk in it, take the mix to 71 °C or use pasteurised.",
};

interface Board {
  readonly sheet: CorpusSheet;
  readonly items: readonly Spot[];
  readonly heads: readonly Spot[];
  readonly amountLabel: Spot;
  readonly served: { readonly temperature: Spot; readonly temperatureC: number };
}

const AFTER = [
  "All in",
  "Freezing point (°C)",
  "Frozen when served (% of the mix)",
  "Sugars (% of the mix)",
];

/** One ice along its line; gives its amounts. */
function ice(kit: Kit, made: MadeRecipe, index: number, board: Board): readonly Spot[] {
  const { sheet, items, heads, amountLabel, served } = board;
  const row = 5 + index;
  putRow(sheet, row, 0, [`Week ${index + 1}`, made.title]);
  const recipe = alongRow(kit, sheet, made, row, { items, unit: "g", format: "0", amountLabel });
  const left = recipe.total!.column;
  const plans: readonly ResultPlan[] = [
    { states: "freezing point", as: "formula", format: "0.0" },
    { states: "ice of mix", as: "formula", format: "0", ...served },
    { states: "sugar share", as: "typed", decimals: 1 },
  ];
  plans.forEach((plan, at) => {
    const column = left + 1 + at;
    resultAt(sheet, recipe, heads[at + 1]!, { row, column }, plan, () => recipe.lines);
  });
  nameTarget(sheet, recipe, { row, column: left + 4 });
  tellIn(sheet, recipe, { row, column: left + 5 }, VOICE);
  return recipe.all;
}

/** What has to be bought for all of it. */
function shopping(kit: Kit, totals: readonly Spot[], names: readonly string[]): void {
  const sheet = addSheet(kit.marked.book, "Shopping");
  put(sheet, 0, 0, "For all the weeks together");
  const heads = putRow(sheet, 2, 0, ["To buy", "Needed (g)", "Price ($ per kg)", "Comes to ($)"]);
  const rows = names.map((name, index) => {
    const row = 3 + index;
    const home = { sheet: sheet.name, row, column: 1 };
    const needed = `=${calledFrom(home, totals[index]!)}`;
    const [, grams, price] = putRow(sheet, row, 0, [
      name,
      needed,
      shown(perKilo(kit, name), "0.00"),
    ]);
    const cost = `=${a1(grams!)}/1000*${a1(price!)}`;
    return [grams!, put(sheet, row, 3, shown(cost, "0.00"))];
  });
  formulaColumn(kit, heads[3]!, rows, 1);
  const end = 3 + rows.length;
  put(sheet, end, 0, "Altogether");
  sumOf(kit, sheet, { row: end, column: 1 }, columnOf(rows, 0), "0");
  sumOf(kit, sheet, { row: end, column: 3 }, columnOf(rows, 1), "0.00");
}

/** A line for each week's ice, a column for each thing that goes in, and the shopping for all. */
function eveningClass(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Six weeks");
  put(sheet, 0, 0, "Evening class: frozen puddings, one each week");
  const temperatureC = random.pick([-11, -13, -14]);
  const temperature = given(kit, sheet, [2, 1], ["We serve at", "°C", temperatureC]);
  const mades = kit.make(6);
  const names = itemsOf(mades);
  const amountLabel = put(sheet, 3, 2, "grams of each");
  putRow(sheet, 4, 0, ["When", "Pudding"]);
  const items = putRow(sheet, 4, 2, names);
  const heads = putRow(sheet, 4, 2 + names.length, [...AFTER, "Meant to be", "Tell the class"]);
  const board = { sheet, items, heads, amountLabel, served: { temperature, temperatureC } };
  const rows = mades.map((made, index) => ice(kit, made, index, board));
  put(sheet, 5 + rows.length, 1, "Six weeks together");
  const totals = items.map(({ column }, at) =>
    sumOf(kit, sheet, { row: 5 + rows.length, column }, columnOf(rows, at), "0"),
  );
  note(kit, sheet, 7 + rows.length, 1, "Check who cannot eat what before week one.");
  shopping(kit, totals, names);
}

/** An evening class in frozen puddings. */
export const eveningClasses: readonly Layout[] = [
  { name: "evening class, a line a week and the shopping", language: "en", build: eveningClass },
];
