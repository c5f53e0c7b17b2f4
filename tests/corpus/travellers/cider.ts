import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { about } from "../passing/words";
import type { MadeRecipe } from "../recipes";
import { isBoozy, pair, sayAll, suited } from "./words";

/** What is poured at the barn door: per cent by volume, and grams to the millilitre. */
const BOTTLES = [
  ["farmhouse cider", 6.5, 1.0],
  ["perry", 5.5, 1.0],
  ["apple brandy", 40, 0.948],
  ["dry white wine", 12.5, 0.99],
] as const;

const WARNING =
  "Contains alcohol and sulphites: not for children, not in pregnancy, not before driving.";

/** One bottle along its row; gives its grams and its alcohol. */
function bottle(kit: Kit, sheet: CorpusSheet, row: number, density: Spot): Spot[] {
  const [name, strength, perMl] = BOTTLES[row - 5]!;
  const poured = 10 * kit.random.whole(2, 15);
  const line = [name, strength, poured, shown(perMl, "0.000")];
  const [, abv, ml, weight] = putRow(sheet, row, 0, line) as [Spot, Spot, Spot, Spot];
  const grams = put(sheet, row, 4, shown(`=${a1(ml)}*${a1(weight)}`, "0.0"));
  const content = `=${a1(ml)}*${a1(abv)}/100*${fixed(density)}`;
  const alcohol = put(sheet, row, 5, shown(content, "0.0"));
  kit.marked.alcohols.push({ grams, abv, alcohol });
  return [grams, alcohol];
}

/** Alcohol in what goes into the lollies, from the label's per cent by volume. */
function bottles(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe): void {
  const { formulaColumns } = kit.marked;
  put(sheet, 0, 0, "How much alcohol is in what we pour");
  recipe.flags.push(put(sheet, 1, 0, WARNING));
  const density = pair(sheet, 2, 0, "1 ml of pure alcohol weighs (g)", shown(0.789, "0.000"));
  const heads = putRow(sheet, 4, 0, [
    ...["Bottle", "Strength (% vol)", "Poured (ml)", "1 ml weighs (g)", "That is (g)"],
    "Alcohol in it (g)",
  ]);
  const rows = BOTTLES.map((_, index) => bottle(kit, sheet, 5 + index, density));
  const [grams, alcohol] = [columnOf(rows, 0), columnOf(rows, 1)];
  formulaColumns.push({ spots: grams, heading: heads[4]!, fixed: [] });
  formulaColumns.push({ spots: alcohol, heading: heads[5]!, fixed: [density] });
  put(sheet, 9, 0, "All bottles");
  sumOf(kit, sheet, { row: 9, column: 4 }, grams, "0.0");
  sumOf(kit, sheet, { row: 9, column: 5 }, alcohol, "0.0");
}

/** Jugs, and grams of sugar to one of water. */
const JUGS = [
  ["weak", 0.5],
  ["half and half", 1],
  ["strong", 1.6],
  ["for pears", 0.7],
] as const;

/** The sugar syrups for the lollies. */
function syrups({ marked, random }: Kit, sheet: CorpusSheet): void {
  put(sheet, 11, 0, "Syrups on the shelf");
  const heads = putRow(sheet, 12, 0, [
    ...["Jug", "Water (g)", "Sugar (g)", "Sugar in 100 g syrup (g)", "Sugar on 100 g water (g)"],
  ]);
  const rows = JUGS.map(([jug, ratio], index) => {
    const poured = 100 * random.whole(3, 7);
    const sizes = [jug, poured, Math.round(poured * ratio)];
    const [, water, sugar] = putRow(sheet, 13 + index, 0, sizes) as [Spot, Spot, Spot];
    const mix = `=100*${a1(sugar)}/(${a1(water)}+${a1(sugar)})`;
    const share = put(sheet, 13 + index, 3, shown(mix, "0.0"));
    const onWater = `=100*${a1(sugar)}/${a1(water)}`;
    const perWater = put(sheet, 13 + index, 4, shown(onWater, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [share, perWater];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

const SAID: readonly Said[] = [
  { label: "freezes at, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "pure alcohol, g", states: "alcohol", as: "typed", decimals: 1 },
  {
    label: "of the water, ice at −18 °C, %",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  { label: "sugars, % of the mix", states: "sugar share", as: "typed" },
  { label: "water in all, g", states: "water", as: "typed", decimals: 0 },
];

/** The lines of a bucket, and of all buckets of a press day. */
function buckets(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const words = { label: "Lolly (g)", bare: "Lolly", value: kit.random.pick([65, 75, 90]) };
  const lolly = input(kit, sheet, { row: 1, column: 0 }, words);
  const count = pair(sheet, 2, 0, "Buckets on press day", kit.random.whole(2, 5));
  const plan = {
    heads: ["In the bucket", "One bucket (g)", "Press day (g)"],
    cells: (name: string, grams: number) => [name, grams],
  };
  const { heads, names, amounts, end } = listed(sheet, made, { row: 4, column: 0 }, plan);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [count] },
    content: (spot) => `=${a1(spot)}*${fixed(count)}`,
  });
  put(sheet, end, 0, "Bucket holds");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const day = sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const sticks = shown(`=${a1(day)}/${a1(lolly)}`, "0");
  pair(sheet, end + 1, 0, "Lollies on press day", sticks);
  const amountLabel = heads[1]!;
  return markRecipe(kit, made, { names, amounts, alsoAmounts, unit: "g", amountLabel, total });
}

/** The lolly mix. */
function lollies(kit: Kit, sheet: CorpusSheet): MarkedRecipe {
  const given = about(suited(kit, 1, isBoozy)[0]!, 4000);
  const made = called(given, { sugar: "cane sugar", water: "tap water" });
  put(sheet, 0, 0, `${made.title}, barn door lollies`);
  const recipe = buckets(kit, sheet, made);
  sayAll(
    kit,
    sheet,
    recipe,
    { row: recipe.total!.row + 3, column: 0 },
    {
      ...{ said: SAID, target: "ought to be", lead: "On the board: contains" },
      note: "Brandy only when the bucket is cold, it flies off otherwise.",
    },
  );
  return recipe;
}

/** Lollies, bottles and syrups of a cider maker. */
function ciderBarn(kit: Kit): void {
  const recipe = lollies(kit, addSheet(kit.marked.book, "Lollies"));
  const sheet = addSheet(kit.marked.book, "Bottles");
  bottles(kit, sheet, recipe);
  syrups(kit, sheet);
}

/** A cider maker with a freezer. */
export const ciderMakers: readonly Layout[] = [
  { name: "cider barn, lollies with bottles and syrups", language: "en", build: ciderBarn },
];
