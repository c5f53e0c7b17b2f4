import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { priceFor } from "../guests/prices";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { beside, listed, type Listed } from "../newcomers/words";
import { about } from "../passing/words";
import { withMilk } from "./herd";
import { hatchBooks } from "./hatchBook";
import { given, warnIn, type Cautions } from "./words";

const OWN: Cautions = {
  honey: "Has honey in it: no babies under 12 months, please.",
  alcohol: "Has alcohol in it: not for children, mums-to-be or drivers.",
  nuts: "Whole nuts in it: choking risk, not for children under 5.",
  egg: "Raw egg yolk goes in: heat the mix to 71 °C or buy pasteurised.",
};

const FROM: readonly (readonly [RegExp, string])[] = [
  [/^(full-fat|whole) milk$|^cream/, "our cows"],
  [/yolk/, "Mum's hens"],
  [/honey/, "the bees"],
  [/^water/, "borehole"],
  [/berries|peach|cherries|puree/, "pick your own"],
];

const from = (name: string): string => FROM.find(([of]) => of.test(name))?.[1] ?? "wholesaler";

const DAYS = ["Thu", "Fri", "Sat", "Sun", "Bank hol"];

/** What the freezer under the hatch read when we opened and when we shut. */
function readings({ random, marked }: Kit, sheet: CorpusSheet, top: number, left: number): void {
  const heads = putRow(sheet, top, left, ["Hatch freezer", "opening (°C)", "closing (°C)"]);
  const rows = DAYS.map((day, index) => {
    const [opening, closing] = [random.whole(160, 185), random.whole(125, 155)];
    const both = [opening, closing].map((each) => shown(-each / 10, "0.0"));
    return putRow(sheet, top + 1 + index, left, [day, ...both]);
  });
  for (const at of [1, 2]) {
    const spots = rows.map((cells) => cells[at]!);
    marked.numberColumns.push({ spots, heading: heads[at]!, total: null, kind: "temperature" });
  }
}

/** Money and the weekend's churns beside the lines. */
function money(kit: Kit, list: Listed, churns: Spot): { total: Spot; money: Spot; also: Spot[] } {
  const { sheet, heads, amounts, end } = list;
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1({ ...spot, column: 3 })}*${a1(spot)}`,
  });
  const also = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [churns] },
    content: (spot) => `=${fixed(churns)}*${a1(spot)}`,
  });
  put(sheet, end, 1, "In the churn");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  const sum = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  sumOf(kit, sheet, { row: end, column: 5 }, also, "0.00");
  return { total, money: sum, also };
}

/** What goes into a churn, in kilograms. */
function lines({ random }: Kit, sheet: CorpusSheet, made: MadeRecipe): Listed {
  return listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["From", "What", "One churn (kg)", "£ a kg", "£ a churn", "Weekend (kg)"],
      ...{ name: 1, amount: 2 },
      cells: (name, grams) => [
        ...[from(name), name, shown(inUnit(grams, "kg"), "0.000")],
        shown(priceFor(random, name), "0.00"),
      ],
    },
  );
}

/** What we know of it, and what goes on the board; gives the next free row. */
function board(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  const next = say(sheet, recipe, { row, column: 1 }, [
    { label: "Begins to set at (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Sugars of all kinds, milk sugar too (%)", states: "sugar share", as: "typed" },
    {
      label: "Water gone to ice at −14 °C (%)",
      ...{ states: "ice of water", as: "typed", temperatureC: -14 },
    },
    { label: "Water in a churn (g)", states: "water", as: "typed", decimals: 0 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Want it" });
  return warnIn(sheet, recipe, { row: next + 1, column: 1 }, ["For the board, contains", OWN]);
}

/** One churn in kilograms, what it costs, what a pot brings. */
function churn(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Churn");
  const made = called(about(withMilk(kit, 1)[0]!, 5000), { "whole milk": "full-fat milk" });
  put(sheet, 0, 0, `${made.title} for the hatch`);
  const churns = putRow(sheet, 1, 0, ["Churns for the weekend", random.whole(2, 5)])[1]!;
  const pot = given(kit, sheet, [2, 0], ["Gelato in a pot", "kg", 0.12, "0.000"]);
  const price = given(kit, sheet, [3, 0], ["A pot sells at", "£", 3.2, "0.00"]);
  const list = lines(kit, sheet, made);
  const { total, money: cost, also } = money(kit, list, churns);
  const { names, amounts, heads, end } = list;
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: also, unit: "kg", amountLabel: heads[2]!, total },
  });
  const count = shown(`=${a1(total)}/${a1(pot)}`, "0");
  const pots = putRow(sheet, end + 2, 1, ["Pots out of a churn", count])[1]!;
  const left = shown(`=${a1(pots)}*${a1(price)}-${a1(cost)}`, "0.00");
  putRow(sheet, end + 3, 1, ["Left after ingredients, a churn (£)", left]);
  const free = board(sheet, recipe, end + 5);
  readings(kit, sheet, 5, 7);
  note(kit, sheet, free + 1, 1, "Milk out of the tank goes through the pasteuriser first, always.");
}

/** A dairy farmer's family with a gelato hatch. */
export const hatches: readonly Layout[] = [
  { name: "dairy farm hatch, one churn and the weekend", language: "en", build: churn },
  ...hatchBooks,
];
