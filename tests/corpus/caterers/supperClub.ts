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
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside as formulasBeside, listed } from "../newcomers/words";
import { byHand, formulaColumn } from "../pilgrims/words";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { asAnswerOnly } from "../layouts/marking";
import { priceList } from "./priceList";
import { tellIn, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Guests must know: contains",
  honey: "Honey: not for babies under 12 months.",
  alcohol: "There is alcohol in it: no children, nobody pregnant, nobody driving.",
  nuts: "Whole nuts: a choking risk for children under 5.",
  egg: "Raw egg yolk: bring to 71 °C or take pasteurised yolk.",
};

const SAID: readonly Said[] = [
  { label: "Freezing point (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Water in it (g)", states: "water", as: "formula", format: "0" },
  {
    label: "Ice at −17 °C, of the whole mix (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -17, decimals: 0 },
  },
];

const TOP = 6;

interface Dish {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly point: Spot;
}

/** An ice on a sheet of its own: what it does first, then what goes in and what that costs. */
function dish(kit: Kit, made: MadeRecipe, prices: string): Dish {
  const sheet = addSheet(kit.marked.book, made.title);
  put(sheet, 0, 0, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: TOP, column: 0 },
    {
      heads: ["#", "Ingredient", "Weigh (g)", "€ per kg", "€", "Part of the mix"],
      cells: (name, grams, index) => [index + 1, name, grams],
      ...{ name: 1, amount: 2 },
    },
  );
  put(sheet, end, 1, "Everything");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0");
  const at = { sheet, format: "0.00" };
  const paid = formulasBeside(kit, heads[3]!, names, {
    ...{ ...at, content: (name) => `=VLOOKUP(${a1(name)},${prices},3,FALSE)` },
  });
  const costs = formulasBeside(kit, heads[4]!, amounts, {
    ...{ ...at, content: (grams, index) => `=${a1(grams)}*${a1(paid[index]!)}/1000` },
  });
  const parts = formulasBeside(kit, heads[5]!, amounts, {
    ...{
      sheet,
      format: "0.0%",
      content: (grams) => `=${a1(grams)}/${fixed(total)}`,
      fixed: [total],
    },
  });
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  sumOf(kit, sheet, { row: end, column: 5 }, parts, "0.0%");
  const cells = { names, amounts, unit: "g", amountLabel: heads[2]!, total } as const;
  const recipe = markRecipe(kit, made, { ...cells, alsoAmounts: parts });
  say(sheet, recipe, { row: 2, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: 2, column: 4, label: "To be" });
  tellIn(sheet, recipe, { row: end + 2, column: 1 }, VOICE);
  return { recipe, cost, point: { sheet: sheet.name, row: 2, column: 2 } };
}

const HEADS = [
  "Course",
  "Ice",
  "Batch (g)",
  "Batch (€)",
  "Freezing point (°C)",
  "Guests",
  "Per guest (€)",
];

/** The front page reads what it needs from the others. */
function front(kit: Kit, sheet: CorpusSheet, dishes: readonly Dish[]): void {
  put(sheet, 0, 0, "Supper club, this month's ices");
  const heads = putRow(sheet, 2, 0, HEADS);
  const rows = dishes.map(({ recipe, cost, point }, index) => {
    const row = 3 + index;
    const home = { sheet: sheet.name, row, column: 0 };
    const read = (spot: Spot, format: string) => shown(`=${calledFrom(home, spot)}`, format);
    const cells = putRow(sheet, row, 0, [
      ...[`Course ${index + 2}`, recipe.made.title, read(recipe.total!, "0"), read(cost, "0.00")],
      ...[read(point, "0.0"), kit.random.whole(8, 16)],
    ]);
    byHand(recipe, "freezing point", heads[4]!, cells[4]!);
    asAnswerOnly(recipe);
    const [, , , paid, , guests] = cells;
    return [...cells, put(sheet, row, 6, shown(`=${a1(paid!)}/${a1(guests!)}`, "0.00"))];
  });
  formulaColumn(kit, heads[6]!, rows, 6);
  const end = 3 + rows.length;
  put(sheet, end, 1, "All of them");
  for (const [at, format] of [
    [2, "0"],
    [3, "0.00"],
    [6, "0.00"],
  ] as const) {
    sumOf(kit, sheet, { row: end, column: at }, columnOf(rows, at), format);
  }
  note(kit, sheet, end + 2, 0, "Guests: those who booked, not those on the waiting list.");
}

/** A front page, prices, and a sheet for each ice. */
function supperClub(kit: Kit): void {
  const { book } = kit.marked;
  const first = addSheet(book, "This month");
  const mades = kit.make(4);
  const prices = priceList(kit, addSheet(book, "Prices"), mades);
  front(
    kit,
    first,
    mades.map((made) => dish(kit, made, prices)),
  );
}

/** A supper club at somebody's home. */
export const supperClubs: readonly Layout[] = [
  { name: "supper club, front page and prices looked up", language: "en", build: supperClub },
];
