import { a1, addSheet, calledFrom, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, itemsOf, madeOf } from "../strollers/words";
import { aside } from "./words";

const VOICE: Voice = {
  lead: "SIGN ON THE TUB: contains",
  honey: "HONEY, no babies under 12 months.",
  alcohol: "ALCOHOL, grown-ups only, not when pregnant or driving.",
  nuts: "WHOLE NUTS, a choking hazard for under 5s.",
  egg: "RAW YOLK, so heat it to 71 °C or use the pasteurised carton.",
};

const METHOD = [
  "Warm the wet things, stir in the dry.",
  "Blend for one minute.",
  "Cool the pan in the vestry sink.",
  "Overnight in the fridge.",
  "Churn until it holds a ridge.",
];

const SAID: readonly Said[] = [
  { label: "starts to freeze, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "K below water", states: "depression", as: "typed" },
  { label: "g of water in it", states: "water", as: "formula", format: "0" },
  { label: "g dissolved", states: "dissolved", as: "formula", format: "0" },
  {
    label: "% of its water frozen at −18 °C",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** One card: amounts first, the method beside them, the numbers in a strip below. */
function card(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, index: number) {
  putRow(sheet, top, 0, [`No. ${index + 1}`, made.title, undefined, "cook:"]);
  put(sheet, top, 4, ["Joan", "Mr Pell", "the Guides"][index]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["grams", "of", undefined, "method"],
      cells: (item, grams, at) => [grams, item, undefined, METHOD[at]],
      ...{ name: 1, amount: 0 },
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "in the pan");
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    unit: "g",
    amountLabel: heads[0]!,
    total,
  });
  strip(sheet, recipe, { row: end + 1, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: end + 3, column: 0, label: "meant for" });
  return { recipe, next: tellIn(sheet, recipe, { row: end + 4, column: 0 }, VOICE) };
}

/** What the amounts of one item are called in a formula on another sheet. */
const amountsOf = (item: string, home: Spot, recipes: readonly MarkedRecipe[]): string =>
  recipes
    .flatMap(({ made, amounts }) => amounts.filter((_, index) => made.names[index] === item))
    .map((spot) => calledFrom(home, spot))
    .join("+");

/** Everything to buy, added up from the cards. */
function shopping(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 0, 0, "To buy by Thursday");
  const [, times] = putRow(sheet, 1, 0, ["Pans of each", kit.random.pick([2, 3, 4])]);
  const heads = putRow(sheet, 3, 0, [
    "item",
    "one pan of each, g",
    "altogether, g",
    "who has some?",
  ]);
  const single = itemsOf(recipes.map(({ made }) => made)).map((item, index) => {
    const spot = put(sheet, 4 + index, 0, item);
    return put(sheet, spot.row, 1, `=${amountsOf(item, { ...spot, column: 1 }, recipes)}`);
  });
  beside(kit, heads[2]!, single, {
    ...{ sheet, format: "0", fixed: [times!] },
    content: (spot) => `=${a1(spot)}*$B$2`,
  });
  put(sheet, 4, 3, "ask Joan first");
  const row = 5 + single.length;
  const money = ["Cones (£)", "Ice for the cool boxes (£)", "Float (£)"].map((what) => [
    ...[what, shown(kit.random.whole(8, 60) / 2, "0.00")],
  ]);
  aside(sheet, { row, column: 0 }, ["Out of the tea fund", "£"], money);
  note(kit, sheet, row + 5, 0, "Receipts in the blue tin, please!");
}

/** Three cards below each other and the shopping that follows from them. */
function fete(kit: Kit): void {
  const own = { sugar: "caster sugar", honey: "runny honey", "egg yolk": "egg yolks" };
  const sheet = addSheet(kit.marked.book, "Cards");
  put(sheet, 0, 0, "Church fête, ice cream stall: recipe cards");
  let top = 2;
  const mades = madeOf(kit, 3, (made) => !isAlcoholic(made)).map((made) => called(made, own));
  const recipes = mades.map((made, index) => {
    const { recipe, next } = card(kit, sheet, made, top, index);
    top = next + 2;
    return recipe;
  });
  shopping(kit, addSheet(kit.marked.book, "Shopping"), recipes);
}

/** Volunteers at a fête. */
export const fetes: readonly Layout[] = [
  { name: "church fête, recipe cards and the shopping", language: "en", build: fete },
];
