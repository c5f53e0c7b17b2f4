import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "Tell the table:",
  honey: "honey, so none for babies under 12 months.",
  alcohol: "there is alcohol in it, so not for children, mums-to-be or whoever steers the boat.",
  nuts: "whole nuts, so not for under-fives, they choke on them.",
  egg: "raw egg yolk, cook the mix to 71 °C unless the yolk is pasteurised.",
};

const FACTS: readonly Said[] = [
  { label: "begins to freeze (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "sugars in the mix (%)", states: "sugar share", as: "typed", decimals: 1 },
  {
    ...{ label: "sugars for each 100 g of water (g)", states: "sugar per 100 g water" },
    ...{ as: "typed", decimals: 1 },
  },
  { label: "water in 100 g of mix (g)", states: "water", as: "typed", decimals: 1 },
];

const packedIn = (en: string): string => {
  if (en === "water") return "tank";
  const isDry = /sugar|sucrose|dextrose|fructose|syrup|salt|cocoa|inulin|acid|nut|pistachio/.test(
    en,
  );
  return isDry && !en.includes("milk") ? "dry crate" : "cool box";
};

/** How much the guests will eat. */
function needed(kit: Kit, sheet: CorpusSheet): Spot {
  const { random } = kit;
  const guests = putRow(sheet, 2, 0, ["guests on board", random.pick([24, 36, 48])])[1]!;
  const helping = input(
    kit,
    sheet,
    { row: 3, column: 0 },
    {
      ...{ label: "a helping (g)", bare: "a helping", value: random.pick([70, 80, 90]) },
    },
  );
  const spare = putRow(sheet, 4, 0, ["helpings to spare", random.pick([3, 4, 6])])[1]!;
  const formula = `=(${a1(guests)}+${a1(spare)})*${a1(helping)}`;
  return putRow(sheet, 5, 0, ["so we make of each (g)", shown(formula, "0")])[1]!;
}

/** A mix in per cent with the weights for this trip; gives the next free row. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, batch: Spot): number {
  put(sheet, row, 0, made.title);
  const list = listed(
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["part", "%", "weigh (g)", "packed in"],
      cells: (item, grams, at) => [
        ...[item, shown(grams, "0.0"), undefined],
        packedIn(made.lines[at]!.en),
      ],
    },
  );
  const { heads, names, amounts, end } = list;
  const weights = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}/100`,
  });
  put(sheet, end, 0, "should be 100");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, weights, "0");
  const lines = { names, amounts, alsoAmounts: weights, total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "%" });
  const said = say(sheet, recipe, { row: end + 1, column: 0 }, FACTS);
  nameTarget(sheet, recipe, { row: said, column: 0, label: "we want it" });
  return tellIn(sheet, recipe, { row: said + 1, column: 0 }, VOICE) + 1;
}

/** Mixes in per cent, one under the other, all weighed out for the same guests. */
function barge(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Trip");
  put(sheet, 0, 0, "Supper cruise, ices to finish");
  const batch = needed(kit, sheet);
  const words = { sugar: "caster sugar", water: "tap water" };
  const mades = kit.make(2).map((made) => called(largestFirst(made), words));
  const end = mades.reduce((row, made) => mix(kit, sheet, made, row, batch), 7);
  const galley = { heading: "galley freezer read (°C)", count: 4, from: -22, to: -16 };
  readings(kit, sheet, { row: 2, column: 6 }, galley);
  ["when", "leaving the wharf", "second lock", "before supper", "back at the wharf"].forEach(
    (words, index) => put(sheet, 2 + index, 5, words),
  );
  note(kit, sheet, end, 0, "Generator off while moored: lids stay shut.");
}

/** A caterer on a canal boat. */
export const barges: readonly Layout[] = [
  { name: "canal boat suppers, ices in per cent and for the guests", language: "en", build: barge },
];
