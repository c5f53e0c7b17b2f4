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
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { placesOf } from "../regulars/columns";
import { perHundred, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { changed, plainOf } from "./swaps";
import { down, given, warning, type Cautions } from "./words";

const OWN: Cautions = {
  honey: "honey (not under 12 months)",
  alcohol: "alcohol (adults only, not in pregnancy, not before driving)",
  nuts: "whole nuts (choking hazard under 5)",
  egg: "raw egg yolk (heat to 71 °C or pasteurised)",
};

const FACTS: readonly (readonly [string, ResultPlan])[] = [
  ["Begins freezing at (°C)", { states: "freezing point", as: "formula" }],
  ["Sugars in 100 g water (g)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["Sugars in the whole (%)", { states: "sugar share", as: "typed" }],
  ["Water in 100 g (g)", { states: "water", as: "formula", format: "0.0" }],
  ["Water that is ice at −15 °C (%)", { states: "ice of water", as: "typed", temperatureC: -15 }],
  ["Ice in the whole at −15 °C (%)", { states: "ice of mix", as: "typed", temperatureC: -15 }],
];

const TOP = 6;

interface Table {
  readonly items: readonly Spot[];
  readonly left: number;
  readonly batch: Spot;
  readonly percent: Spot;
}

/** Per cent of one variant and its grams for the batch, two columns. */
function columns(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, table: Table): MarkedRecipe {
  const { items, left, batch, percent } = table;
  const at = placesOf(sheet, items, made.names);
  const amounts = at.map((item, index) =>
    put(sheet, TOP + item, left, shown(made.grams[index]!, "0.0")),
  );
  const all = items.map((spot) => ({ ...spot, column: left }));
  const end = TOP + items.length;
  const total = sumOf(kit, sheet, { row: end, column: left }, all, "0.0");
  const grams = all.map(({ row }) => ({ sheet: sheet.name, row, column: left + 1 }));
  for (const [index, spot] of grams.entries()) {
    const formula = `=${a1(all[index]!)}*${fixed(batch)}/100`;
    put(sheet, spot.row, spot.column, shown(formula, "0"));
  }
  const heading = { ...percent, column: left + 1 };
  kit.marked.formulaColumns.push({ spots: grams, heading, fixed: [batch] });
  sumOf(kit, sheet, { row: end, column: left + 1 }, grams, "0");
  kit.marked.numberColumns.push({ spots: amounts, heading: percent, total, kind: "per cent" });
  return markRecipe(kit, made, {
    ...{ names: at.map((item) => items[item]!), amounts, unit: "%", amountLabel: percent, total },
    ...{ alsoAmounts: at.map((item) => grams[item]!), shared: true },
  });
}

/** One variant, and what is said of it under its per cent. */
function variant(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, table: Table): void {
  const { items, left } = table;
  const recipe = columns(kit, sheet, made, table);
  const all = items.map((spot) => ({ ...spot, column: left }));
  const lines = `${absolute(span(items))},${span(all)}`;
  const row = TOP + items.length + 2;
  FACTS.forEach(([, plan], index) => {
    const label = { sheet: sheet.name, row: row + index, column: 0 };
    resultAt(sheet, recipe, label, { row: label.row, column: left }, plan, () => lines);
  });
  const next = row + FACTS.length;
  nameTarget(sheet, recipe, { row: next, column: left });
  const words = warning(made, "contains", OWN);
  if (words !== "") recipe.flags.push(put(sheet, next + 1, left, words));
  put(sheet, next + 2, left, kit.random.whole(18, 34));
}

/** The control, and two variants of it. */
function ways(kit: Kit): readonly (readonly [string, MadeRecipe])[] {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  const others = [changed(plain, 0.7), changed(plain, 0.6, "dextrose monohydrate")];
  const [control, less, swapped] = [made, ...others].map((each) => stillMet(perHundred(each)));
  return [
    ["Control", control!],
    ["Variant 1, less sugar", less!],
    ["Variant 2, part dextrose", swapped!],
  ];
}

/** Ingredients and labels down the left; gives the ingredients. */
function leftSide(sheet: CorpusSheet, mades: readonly MadeRecipe[]): Spot[] {
  put(sheet, TOP - 1, 0, "Ingredient");
  const all = [...new Set(mades.flatMap(({ names }) => names))];
  const items = down(sheet, [TOP, 0], all);
  put(sheet, TOP + all.length, 0, "Total");
  const row = TOP + all.length + 2;
  down(
    sheet,
    [row, 0],
    [
      ...FACTS.map(([label]) => label),
      ...["Intended texture", "Allergens and warnings", "Time to first drip (min)"],
    ],
  );
  return items;
}

/** A control and its variants in per cent, compared line by line. */
function comparison(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Comparison");
  const list = ways(kit);
  put(sheet, 0, 0, `Coursework, table 3: ${list[0]![1].title} and two variants of it`);
  const size = kit.random.pick([400, 500, 650]);
  const batch = given(kit, sheet, [2, 0], ["Weight of each batch", "g", size]);
  const items = leftSide(
    sheet,
    list.map(([, made]) => made),
  );
  list.forEach(([name, made], index) => {
    const left = 1 + 2 * index;
    put(sheet, TOP - 2, left, name);
    const [percent] = putRow(sheet, TOP - 1, left, ["% by weight", "grams"]);
    variant(kit, sheet, made, { items, left, batch, percent: percent! });
  });
  const row = TOP + items.length + FACTS.length + 6;
  note(kit, sheet, row, 0, "Drip test: 50 g scoop on a sieve at 21 °C room.");
}

/** Variants of one recipe. */
export const comparisons: readonly Layout[] = [
  { name: "home economics project, control and variants", language: "en", build: comparison },
];
