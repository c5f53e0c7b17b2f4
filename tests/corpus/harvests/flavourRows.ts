import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { allergensOf, alongRow, cautionsIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { absolute } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { formulas } from "../layouts/marking";
import { itemsOf, upTo } from "../strollers/words";
import { resultAt, type ResultPlan } from "../results";
import { usualPrice } from "../unseen/shared";
import { goodsOf, numbersUnder, readings, table } from "./words";

const VOICE: Voice = {
  lead: "",
  honey: "Honey, no babies under 12 months.",
  alcohol: "Alcohol, no children, pregnant customers or drivers.",
  nuts: "Whole nuts, under-fives can choke.",
  egg: "Raw egg yolk, 71 °C in the pasteuriser or pasteurised yolk.",
};

const FACTS: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["Freezing pt °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Depression K", { states: "depression", as: "typed" }],
  ["Water g", { states: "water", as: "typed", decimals: 0 }],
  [
    "Ice in the mix at −14 °C %",
    { states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  ],
];

const FIRST = 3;

/** The headings of the columns, the prices under those of the ingredients. */
function headings(kit: Kit, sheet: CorpusSheet, goods: ReturnType<typeof goodsOf>) {
  const amountLabel = put(sheet, FIRST, 0, "Flavour (kg per tank)");
  const items = putRow(
    sheet,
    FIRST,
    1,
    goods.map(({ name }) => name),
  );
  put(sheet, FIRST - 1, 0, "Price £/kg");
  const prices = goods.map(({ en }, at) =>
    put(sheet, FIRST - 1, 1 + at, shown(usualPrice(kit.random, en), "0.00")),
  );
  const heads = putRow(sheet, FIRST, 1 + items.length, [
    ...["Tank kg", "Cost £", ...FACTS.map(([label]) => label), "Sold as", "Allergens", "Warn of"],
  ]);
  return { amountLabel, items, prices, heads };
}

type Heads = ReturnType<typeof headings>;

/** Right of the amounts: the answers, the target, what to tell. */
function rightOf(sheet: CorpusSheet, recipe: MarkedRecipe, lines: string, heads: Heads): void {
  const { row } = recipe.amounts[0]!;
  const first = 2;
  FACTS.forEach(([, plan], at) => {
    const label = heads.heads[first + at]!;
    resultAt(sheet, recipe, label, { row, column: label.column }, plan, () => lines);
  });
  const [target, allergens, warn] = heads.heads.slice(first + FACTS.length) as [Spot, Spot, Spot];
  nameTarget(sheet, recipe, { row, column: target.column });
  const told = allergensOf(recipe.made);
  if (told !== "") recipe.flags.push(put(sheet, row, allergens.column, told));
  const cautions = cautionsIn(recipe.made, VOICE);
  if (cautions !== "") recipe.flags.push(put(sheet, row, warn.column, cautions));
}

/** A flavour to a row, the ingredients across. */
function flavours(kit: Kit): void {
  const words = { sugar: "granulated sugar", banana: "bananas", salt: "fine salt" };
  const mades = kit.make(5).map((made) => called(upTo(made, 8000), words));
  const sheet = addSheet(kit.marked.book, "Flavours");
  put(sheet, 0, 0, "Summer flavours, one tank of each");
  const heads = headings(kit, sheet, goodsOf(mades));
  const { items, prices, amountLabel } = heads;
  const all = mades.map((made, index) => {
    const row = FIRST + 1 + index;
    put(sheet, row, 0, made.title);
    const plan = { items, unit: "kg", format: "0.000", amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    rightOf(sheet, recipe, recipe.lines, heads);
    return recipe.all;
  });
  const costs = all.map((cells) =>
    shown(`=SUMPRODUCT(${absolute(span(prices))},${span(cells)})`, "0.00"),
  );
  const at = [FIRST + 1, heads.heads[1]!.column] as const;
  formulas(kit, heads.heads[1]!, costs, { sheet, at, fixed: prices });
  note(kit, sheet, FIRST + 2 + mades.length, 0, "A tank fills two and a half display pans.");
  stock(kit, itemsOf(mades));
}

/** What is in the store, and the store's temperatures. */
function stock(kit: Kit, items: readonly string[]): void {
  const sheet = addSheet(kit.marked.book, "Store");
  put(sheet, 0, 0, "Counted on Monday");
  const days = ["Monday", "Tuesday", "Thursday"];
  const counted = items.filter((item) => item !== "water");
  table(
    sheet,
    { row: 1, column: 0 },
    ["Item", "Bags or boxes", "Comes on"],
    counted.map((item) => [item, kit.random.whole(1, 9), kit.random.pick(days)]),
  );
  const [am, pm] = [readings(kit, 5, [-22, -18]), readings(kit, 5, [-21, -17])];
  const { heads, columns } = table(
    sheet,
    { row: 1, column: 5 },
    ["Walk-in freezer", "am, °C", "pm, °C"],
    ["Mon", "Tue", "Wed", "Thu", "Fri"].map((day, index) => [day, am[index], pm[index]]),
  );
  for (const column of [1, 2]) numbersUnder(kit, heads[column]!, columns[column]!, "temperature");
}

/** A shop with all its flavours on a page. */
export const flavourRows: readonly Layout[] = [
  { name: "shop, a flavour to a row and prices over the columns", language: "en", build: flavours },
];
