import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";

const VOICE: Voice = {
  lead: "Wrapper must say",
  honey: "Wrapper: honey, not for babies under 12 months.",
  alcohol: "Wrapper: contains alcohol, not for children, not when pregnant or driving.",
  nuts: "Wrapper: whole nuts, choking hazard for children under 5.",
  egg: "Raw egg yolk: base goes to 71 °C (or pasteurised yolk).",
};

const OWN = {
  ...{ sugar: "granulated sugar", strawberries: "strawberries, hulled", banana: "ripe banana" },
  ...{ "orange juice": "freshly squeezed orange juice", honey: "runny honey" },
};

const MOULDS = [
  ["classic", 24, 80],
  ["mini", 40, 45],
  ["rocket", 12, 95],
] as const;

/** The moulds and what they hold; gives the millilitres of all of them. */
function moulds(kit: Kit, sheet: CorpusSheet): Spot {
  const heads = putRow(sheet, 2, 0, ["Mould", "Holes", "ml a hole", "ml"]);
  const rows = MOULDS.map(([mould, holes, hole], index) =>
    putRow(sheet, 3 + index, 0, [mould, holes * kit.random.whole(1, 3), hole]),
  );
  const filled = beside(kit, heads[3]!, columnOf(rows, 1), {
    ...{ sheet, format: "#,##0" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  const end = 3 + rows.length;
  put(sheet, end, 0, "to fill");
  sumOf(kit, sheet, { row: end, column: 1 }, columnOf(rows, 1));
  return sumOf(kit, sheet, { row: end, column: 3 }, filled, "#,##0");
}

/** By how much the kitchen recipe has to grow for them. */
function growth(kit: Kit, sheet: CorpusSheet, volume: Spot, total: Spot): Spot {
  const at = (row: number) => ({ row, column: 6 });
  const heavy = input(kit, sheet, at(2), {
    ...{ label: "Mix weighs (g per ml)", bare: "Mix weighs", value: 1.09, format: "0.00" },
  });
  const spare = input(kit, sheet, at(3), {
    ...{ label: "Left in jug and pan (%)", bare: "Left in jug and pan" },
    value: kit.random.pick([3, 4, 5]),
  });
  const needed = `=${a1(volume)}*${a1(heavy)}*(1+${a1(spare)}/100)`;
  const [, grams] = putRow(sheet, 4, 6, ["Mix needed (g)", shown(needed, "#,##0")]);
  const times = shown(`=${a1(grams!)}/${a1(total)}`, "0.00");
  return putRow(sheet, 5, 6, ["Recipe times", times])[1]!;
}

const PLANS: readonly (readonly [string, ResultPlan])[] = [
  ["Freezing starts (°C)", { states: "freezing point", as: "formula" }],
  ["Water (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Sugars per 100 g water (g)", { states: "sugar per 100 g water", as: "formula", format: "0.0" }],
  [
    "Of the water, frozen at −20 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -20, decimals: 0 },
  ],
];

/** What is said of the mix, in a block of its own at the right. */
function told(sheet: CorpusSheet, recipe: MarkedRecipe, top: number): void {
  put(sheet, top, 6, "The kitchen recipe");
  PLANS.forEach(([words, plan], index) => {
    const row = top + 1 + index;
    const label = put(sheet, row, 6, words);
    resultAt(sheet, recipe, label, { row, column: 7 }, plan);
  });
  nameTarget(sheet, recipe, { row: top + 5, column: 6, label: "Want" });
}

/** A lolly: the kitchen recipe and the same for the moulds. */
function lolly(kit: Kit, made: MadeRecipe): void {
  const sheet = addSheet(kit.marked.book, made.title);
  put(sheet, 0, 0, `${made.title}, how much for the moulds we have clean`);
  const volume = moulds(kit, sheet);
  const [heading, top] = [["Ingredient", "Kitchen (g)", "Moulds (g)"], 9];
  const list = listed(
    sheet,
    made,
    { row: top, column: 0 },
    {
      ...{ heads: heading, cells: (name, grams) => [name, grams] },
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "Makes");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const times = growth(kit, sheet, volume, total);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "#,##0", fixed: [times] },
    content: (spot) => `=${a1(spot)}*${fixed(times)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "#,##0");
  const lines = { names, amounts, alsoAmounts, total, unit: "g", amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, lines);
  told(sheet, recipe, top);
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
  note(kit, sheet, end + 4, 0, "Sticks in after 50 minutes, not before, or they lean.");
}

/** Two lollies for the moulds. */
function lollyMoulds(kit: Kit): void {
  for (const made of kit.make(2)) lolly(kit, called(made, OWN));
}

/** A maker of lollies on sticks. */
export const lollyMakers: readonly Layout[] = [
  {
    name: "lolly maker in Whitstable, recipe grown to the moulds",
    language: "en",
    build: lollyMoulds,
  },
];
