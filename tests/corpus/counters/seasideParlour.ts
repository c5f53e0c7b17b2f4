import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "On the tub label: contains",
  honey: "Honey inside, keep from babies in their first 12 months.",
  alcohol: "Boozy one: contains alcohol, no sale to under-18s, not in pregnancy, not if driving.",
  nuts: "Has whole nuts, choking danger for the under 5s.",
  egg: "Raw egg yolk, take the mix up to 71 °C or use pasteurised.",
};

const WORDS = {
  ...{ "dextrose monohydrate": "dextrose (monohydrate)", water: "tap water" },
  ...{ "cream 35 % fat": "whipping cream 35 %", "skim milk powder": "skimmed milk powder" },
  ...{ mango: "mango pulp", peach: "peach puree" },
};

const SAID: readonly Said[] = [
  { label: "starts to freeze, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "that is below water by, K", states: "depression", as: "formula" },
  { label: "water in 100 g of mix, g", states: "water", as: "typed", decimals: 1 },
  {
    label: "ice in the mix at −13 °C, %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -13, decimals: 0 },
  },
  { label: "sugars in the mix, %", states: "sugar share", as: "typed", decimals: 1 },
];

/** Who serves, which has nothing to do with the mix. */
function rota(sheet: CorpusSheet, column: number): void {
  putRow(sheet, 3, column, ["Hatch rota", "11 to 3", "3 to 7"]);
  [
    ["Fri", "Jo", "Kit"],
    ["Sat", "Jo + Bea", "Kit + Sam"],
    ["Sun", "Bea", "Sam + Jo"],
  ].forEach((cells, index) => putRow(sheet, 4 + index, column, cells));
}

/** What of the sales each size makes. */
function sales(kit: Kit, sheet: CorpusSheet, row: number, column: number): void {
  const [, heading] = putRow(sheet, row, column, ["Sold last August as", "% of takings"]);
  const single = kit.random.whole(40, 55);
  const double = kit.random.whole(20, 30);
  const shares = [single, double, 100 - single - double];
  const spots = ["single", "double", "take-home tub"].map(
    (size, index) => putRow(sheet, row + 1 + index, column, [size, shares[index]!])[1]!,
  );
  put(sheet, row + 4, column, "all");
  const total = sumOf(kit, sheet, { row: row + 4, column: column + 1 }, spots);
  kit.marked.numberColumns.push({ spots, heading: heading!, total, kind: "per cent" });
}

/** Grams for the tub, beside the per cent. */
function tub(kit: Kit, sheet: CorpusSheet, heading: Spot, amounts: readonly Spot[], size: Spot) {
  const spots = beside(kit, heading, amounts, {
    ...{ sheet, format: "0", fixed: [size] },
    content: (spot) => `=${a1(spot)}/100*${fixed(size)}*1000`,
  });
  sumOf(kit, sheet, { row: amounts.at(-1)!.row + 1, column: heading.column }, spots, "0");
  return spots;
}

/** One mix in per cent, the tub beside it, the rota and the chest readings at the right. */
function seasideParlour(kit: Kit): void {
  const made = called(largestFirst(kit.make(1)[0]!), WORDS);
  const sheet = addSheet(kit.marked.book, "Mix");
  put(sheet, 0, 0, `${made.title}, as we make it since the new machine`);
  const words = { label: "Tub holds (kg)", bare: "Tub holds", value: 0 };
  const value = kit.random.pick([2.5, 4, 4.75]);
  const size = input(kit, sheet, { row: 1, column: 0 }, { ...words, value });
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["what", "% of mix", "one tub, g"],
      cells: (name, share) => [name, shown(share, "0.0")],
    },
  );
  const { names, amounts, heads, end } = list;
  put(sheet, end, 0, "all in");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  const alsoAmounts = tub(kit, sheet, heads[2]!, amounts, size);
  const lines = { names, amounts, alsoAmounts, total, unit: "%", amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "wanted" });
  tellIn(sheet, recipe, { row: next + 2, column: 0 }, VOICE);
  rota(sheet, 4);
  sales(kit, sheet, 9, 4);
  const when = ["9 am", "1 pm", "5 pm", "closing"];
  const heading: [string, ...string[]] = ["Chest", "scoop side °C", "store side °C"];
  const ranges = [[-14, -11] as const, [-21, -17] as const];
  readings(kit, sheet, { row: 16, column: 4 }, { heads: heading, when, ranges });
  note(kit, sheet, next + 4, 0, "Scrape the paddle well, the last of it is half a tub.");
}

/** An ice-cream hatch by the sea. */
export const seasideParlours: readonly Layout[] = [
  { name: "seaside hatch, mix in per cent and a tub of it", language: "en", build: seasideParlour },
];
