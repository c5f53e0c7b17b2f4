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
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, sumOf } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf } from "../strollers/words";
import { ENGLISH, pricesOf, shares, thermometer } from "./words";

const VOICE: Voice = { ...ENGLISH, lead: "Chalk up:" };

const ANSWERS: readonly (readonly [string, ResultPlan])[] = [
  ["Freezes from, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  [
    "Of its water frozen in the cart (−15 °C), %",
    { states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  ],
  ["Dissolved stuff, g", { states: "dissolved", as: "formula", format: "0" }],
  ["Sugars % of mix", { states: "sugar share", as: "typed", decimals: 1 }],
];

interface Board {
  readonly items: readonly Spot[];
  readonly prices: readonly Spot[];
  readonly pop: Spot;
  readonly heads: readonly Spot[];
  readonly label: Spot;
}

/** Prices over the ingredients, the ingredients over the amounts. */
function board(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Board {
  const paid = pricesOf(kit, mades);
  put(sheet, 0, 0, "Pops, what goes in and what it costs");
  const words = { label: "One pop (g)", bare: "One pop", value: kit.random.pick([70, 80, 90]) };
  const pop = input(kit, sheet, { row: 1, column: 0 }, words);
  const names = itemsOf(mades);
  put(sheet, 3, 0, "Paid, £ per kg");
  const prices = putRow(
    sheet,
    3,
    1,
    names.map((name) => shown(paid.get(name)!, "0.00")),
  );
  const label = put(sheet, 4, 0, "Flavour (all in g)");
  const items = putRow(sheet, 4, 1, names);
  const heads = putRow(sheet, 4, 1 + names.length, [
    ...["Mix, g", "Costs £", "Pops", "Pence a pop", ...ANSWERS.map(([head]) => head)],
    ...["Meant to be", "On the board"],
  ]);
  return { items, prices, pop, heads, label };
}

/** A flavour's row; gives the cells of its sums and costs. */
function flavour(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, all: Board): Spot[] {
  const { items, prices, pop, heads, label } = all;
  put(sheet, row, 0, made.title);
  const plan = { items, unit: "g", format: "0", amountLabel: label } as const;
  const recipe = alongRow(kit, sheet, made, row, plan);
  const total = recipe.total!;
  const paid = `=SUMPRODUCT(${absolute(span(prices))},${span(recipe.all)})/1000`;
  const cost = put(sheet, row, total.column + 1, shown(paid, "0.00"));
  const pops = put(sheet, row, total.column + 2, shown(`=${a1(total)}/${fixed(pop)}`, "0.0"));
  const pence = `=100*${a1(cost)}/${a1(pops)}`;
  const each = put(sheet, row, total.column + 3, shown(pence, "0"));
  ANSWERS.forEach(([, answer], index) => {
    const place = { row, column: total.column + 4 + index };
    resultAt(sheet, recipe, heads[4 + index]!, place, answer, () => recipe.lines);
  });
  nameTarget(sheet, recipe, { row, column: total.column + 4 + ANSWERS.length });
  tellIn(sheet, recipe, { row, column: total.column + 5 + ANSWERS.length }, VOICE);
  return [total, cost, pops, each];
}

/** Flavours in rows, everything about them to the right. */
function popStand(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Pops");
  const own = { water: "tap water", honey: "runny honey", "lemon juice": "fresh lemon juice" };
  const mades = kit.make(4).map((made) => called(made, own));
  const all = board(kit, sheet, mades);
  const rows = mades.map((made, index) => flavour(kit, sheet, made, 5 + index, all));
  [0, 1, 2, 3].forEach((at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: all.heads[at]!, fixed: at === 2 ? [all.pop] : [] },
    }),
  );
  const end = 5 + mades.length;
  put(sheet, end, 0, "All four");
  [0, 1, 2].forEach((at) => {
    const parts = columnOf(rows, at);
    sumOf(kit, sheet, { row: end, column: parts[0]!.column }, parts, at === 1 ? "0.00" : "0");
  });
  note(kit, sheet, end + 2, 0, "Sticks and sleeves come from the pitch money.");
  const days = addSheet(kit.marked.book, "Pitch diary");
  const next = thermometer(
    kit,
    days,
    { row: 0, column: 0 },
    {
      heads: ["Pitch", "Cart on leaving °C", "Cart on coming home °C"],
      lines: ["School fête", "Canal lock", "Bowls club", "Canal lock again"],
      from: [
        [-20, -16],
        [-16, -11],
      ],
    },
  );
  shares(
    kit,
    days,
    { row: next + 1, column: 0 },
    {
      heads: ["Who buys", "% of pops"],
      parts: ["Kids", "Grown-ups", "Other stalls"],
      total: "Everyone",
    },
  );
}

/** A maker of ice pops with a cart. */
export const popStands: readonly Layout[] = [
  { name: "pop cart, flavours in rows with prices on top", language: "en", build: popStand },
];
