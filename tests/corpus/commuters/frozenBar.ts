import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { massOf, type MadeRecipe } from "../recipes";
import { alcoholIn, asked, chosen, counted, hasAlcohol, warnAt } from "./words";

const answers = (made: MadeRecipe, cold: Spot, temperatureC: number): readonly Said[] => [
  ...alcoholIn(made, "Alcohol by weight in the batch, g"),
  { label: "Won't freeze above, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Freezing point pulled down by, K", states: "depression", as: "formula" },
  {
    ...{ label: "Slush, ice as % of the whole pour", states: "ice of mix", as: "formula" },
    ...{ format: "0", temperature: cold, temperatureC },
  },
  { label: "Sugar, % of the batch by weight", states: "sugar share", as: "typed" },
];

/** The batch in the middle, a single serve at its right. */
function poured(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number) {
  const glasses = counted(sheet, [top + 1, 0], ["Makes (glasses)", Math.round(massOf(made) / 160)]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 3, column: 0 },
    {
      heads: ["Pour in", "Batch, g", "One glass, g"],
      cells: (item, grams) => [item, grams],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [glasses] },
    content: (spot) => `=${a1(spot)}/${fixed(glasses)}`,
  });
  put(sheet, end, 0, "In the jug");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0.0");
  const lines = { names, amounts, unit: "g", amountLabel: heads[1]!, total, alsoAmounts } as const;
  return { recipe: markRecipe(kit, made, lines), end };
}

/** One frozen drink. */
function drink(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  put(sheet, top, 0, made.title);
  const temperatureC = -kit.random.whole(4, 6);
  const words = ["Machine set to", "°C", temperatureC] as const;
  const cold = asked(kit, sheet, [top + 2, 0], words);
  const { recipe, end } = poured(kit, sheet, made, top);
  const next = say(sheet, recipe, { row: end + 1, column: 0 }, answers(made, cold, temperatureC));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "What is left is sold as" });
  const lead = "Say when you hand it over: contains";
  return warnAt(sheet, recipe, { row: next + 1, column: 0 }, lead) + 1;
}

const SHELF = [
  ["White rum", 37.5],
  ["London gin", 41.2],
  ["Orange liqueur", 40],
  ["Herbal aperitif", 15],
  ["Elderflower liqueur", 20],
] as const;

/** The bottles on the shelf: how much alcohol a measure brings. */
function shelf(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Speed rail");
  put(sheet, 0, 0, "What one measure brings, by weight");
  const heads = putRow(sheet, 2, 0, ["Bottle", "ABV, % by volume", "Measure, g", "Alcohol, g"]);
  const rows = SHELF.map(([bottle, strength], index) =>
    putRow(sheet, 3 + index, 0, [bottle, shown(strength, "0.0"), random.whole(23, 48)]),
  );
  const pure = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=RIME.ABVTOMASSFRACTION(${a1({ ...spot, column: 1 })})*${a1(spot)}`,
  });
  rows.forEach(([, abv, grams], index) =>
    marked.alcohols.push({ grams: grams!, abv: abv!, alcohol: pure[index]! }),
  );
  const told = "Contains alcohol: not for under-18s, not for pregnant guests, not for drivers.";
  const warned = put(sheet, 9, 0, told);
  for (const { flags } of marked.recipes) flags.push(warned);
}

/** Frozen drinks under one another, the bottles on a sheet of their own. */
function frozenBar(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Frozen drinks");
  put(sheet, 0, 0, "Terrace bar, frozen drinks for the machine");
  let top = 2;
  for (const made of chosen(kit, 2, hasAlcohol)) {
    top = drink(kit, sheet, called(made, { sugar: "caster sugar" }), top) + 1;
  }
  note(kit, sheet, top, 0, "Blend base first, spirit last, then into the machine.");
  shelf(kit);
}

/** A bar with a slush machine. */
export const frozenBars: readonly Layout[] = [
  { name: "terrace bar, batch and glass and the speed rail", language: "en", build: frozenBar },
];
