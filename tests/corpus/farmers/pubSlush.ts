import { a1, addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, ofAlcohol } from "../strollers/words";
import { readings, table } from "./words";

const VOICE: Voice = {
  lead: "Allergen card:",
  honey: "Honey: not to be given to babies under 12 months.",
  alcohol: "ALCOHOLIC: 18+, not if pregnant, not if driving home.",
  nuts: "Whole nuts: risk of choking for under 5s.",
  egg: "Raw egg yolk: heat to 71 °C or use pasteurised.",
};

const OWN = { "vodka 40 %": "vodka (40% vol)", sugar: "granulated sugar", water: "tap water" };

const OPTICS = [
  ["House vodka", 37.5],
  ["Sloe gin, ours", 26],
  ["Spiced rum", 35],
  ["Elderflower liqueur", 20],
  ["Scrumpy", 6.5],
] as const;

/** What a measure of each brings, by weight. */
function optics(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "BAR SHELF - for pouring over");
  const heads = putRow(sheet, 1, 0, ["Bottle", "Shelf", "ABV %", "Pour g", "Pure alc. g"]);
  const rows = OPTICS.map(([bottle, abv], index) => {
    const pour = abv < 10 ? 10 * random.whole(8, 15) : random.whole(18, 30);
    const line = [bottle, random.pick(["top", "speed rail"]), shown(abv, "0.0"), pour];
    return putRow(sheet, 2 + index, 0, line);
  });
  const pure = beside(kit, heads[4]!, columnOf(rows, 3), {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=${a1(spot)}*RIME.ABVTOMASSFRACTION(${a1({ ...spot, column: 2 })})`,
  });
  rows.forEach(([, , abv, grams], index) =>
    marked.alcohols.push({ grams: grams!, abv: abv!, alcohol: pure[index]! }),
  );
}

/** Warns of the shelf where the tubs with alcohol warn too. */
function warnOfShelf(sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  const strong = recipes.filter(({ made }) => isAlcoholic(made));
  if (strong.some(({ made }) => !made.flagged)) return;
  const words = "Anything off this shelf: 18+, not if pregnant or driving.";
  const spot = put(sheet, 8, 0, words);
  for (const { flags } of strong) flags.push(spot);
}

const said = (made: MadeRecipe): readonly Said[] => [
  ...ofAlcohol(made, "Pure alc. in the tub g"),
  { label: "Water in the tub g", states: "water", as: "formula", format: "0" },
  { label: "Freezes at C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "That is below water by K", states: "depression", as: "formula", format: "0.0" },
  {
    label: "Mix frozen at -9 C, %",
    states: "ice of mix",
    as: "typed",
    temperatureC: -9,
    decimals: 0,
  },
];

/** A tub for the garden bar: the total above its lines, the answers beside them. */
function tub(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): MarkedRecipe {
  put(sheet, row, 0, `TUB: ${made.title}`);
  const { heads, names, amounts } = listed(
    sheet,
    made,
    { row: row + 2, column: 0 },
    {
      heads: ["Chuck in", "Where from", "g"],
      cells: (name, grams) => [name, /vodka/.test(name) ? "cellar" : "kitchen", grams],
      ...{ name: 0, amount: 2 },
    },
  );
  put(sheet, row + 1, 0, "Whole tub");
  const total = sumOf(kit, sheet, { row: row + 1, column: 2 }, amounts);
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    total,
    unit: "g",
    amountLabel: heads[2]!,
  });
  const next = say(sheet, recipe, { row: row + 1, column: 5 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Serve it" });
  tellIn(sheet, recipe, { row: next + 1, column: 5 }, VOICE);
  return recipe;
}

const HOURS = [
  ["Garden bar", "Fri", "5 till 10"],
  [undefined, "Sat", "12 till 10"],
  [undefined, "Sun", "12 till 6"],
];

/** The garden bar's tubs, its freezer and its hours, with the shelf on a sheet of its own. */
function pub(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Garden bar");
  put(sheet, 0, 0, "Boozy ices and others, bank holiday");
  const mades = madeOf(kit, 3, isAlcoholic).map((made) => called(made, OWN));
  const recipes = mades.map((made, index) => tub(kit, sheet, made, 2 + 11 * index));
  const row = 36;
  putRow(sheet, row, 0, ["All tubs, kg", undefined]);
  const all = `=(${recipes.map(({ total }) => a1(total!)).join("+")})/1000`;
  put(sheet, row, 2, shown(all, "0.00"));
  readings(
    kit,
    sheet,
    { row: row + 2, column: 0 },
    {
      heads: ["Chest freezer", "lid end C", "hinge end C"],
      labels: ["Fri 5pm", "Sat noon", "Sat 10pm", "Sun noon"],
      ranges: [
        [-19, -15],
        [-21, -17],
      ],
    },
  );
  table(sheet, { row: row + 2, column: 5 }, HOURS);
  note(kit, sheet, row + 8, 0, "Scoops live in the jug of fresh water, change it every half hour.");
  const shelf = addSheet(kit.marked.book, "Shelf");
  optics(kit, shelf);
  warnOfShelf(shelf, recipes);
}

/** A pub with a garden bar. */
export const gardenBars: readonly Layout[] = [
  { name: "pub in Ludlow, tubs for the garden bar and the shelf", language: "en", build: pub },
];
