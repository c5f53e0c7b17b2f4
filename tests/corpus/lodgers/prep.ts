import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { about, ofSpirits } from "../passing/words";
import type { MadeRecipe } from "../recipes";
import { boozyFirst, given, warnIn, type Cautions } from "./words";

const OWN: Cautions = {
  honey: "honey in it, no babies under 12 months",
  alcohol: "alcohol in it, adults only, not pregnant, not driving",
  nuts: "whole nuts in it, choking hazard under 5",
  egg: "raw egg yolk, take to 71 °C or use pasteurised",
};

interface Service {
  readonly drawer: Spot;
  readonly temperatureC: number;
  readonly portion: Spot;
}

/** What the section knows of a sorbet, right of it; gives the row of its texture. */
function facts(sheet: CorpusSheet, recipe: MarkedRecipe, row: number, service: Service): number {
  const portions = shown(`=${a1(recipe.total!)}/${fixed(service.portion)}`, "0.0");
  putRow(sheet, row, 4, ["portions a tub", portions]);
  const { drawer: temperature, temperatureC } = service;
  const next = say(sheet, recipe, { row: row + 1, column: 4 }, [
    { label: "slushy from", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    {
      ...{ label: "ice in the drawer, of the whole sorbet", inCell: "%", format: "0" },
      ...{ states: "ice of mix", as: "formula", temperature, temperatureC },
    },
    ...ofSpirits(recipe.made, [
      { label: "neat alcohol a tub", inCell: "g", states: "alcohol", as: "typed", decimals: 1 },
    ]),
  ]);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "texture" });
  return next;
}

/** What one tub takes, and the tubs to make; stands under its title. */
function tub(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, make: Spot): MarkedRecipe {
  const list = listed(
    sheet,
    made,
    { row: make.row + 1, column: 0 },
    {
      heads: ["what", "unit", "1 tub", "to make"],
      ...{ amount: 2, cells: (name, grams) => [name, "g", grams] },
    },
  );
  const { heads, rows, names, amounts, end } = list;
  const also = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0", fixed: [make] },
    content: (spot) => `=${a1(spot)}*${fixed(make)}`,
  });
  putRow(sheet, end, 0, ["tub", "g"]);
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: also, unit: "g", amountLabel: heads[2]!, total },
    unitCells: columnOf(rows, 1),
  });
}

/** One sorbet of the prep list: for one tub, for what is short; gives the next free row. */
function sorbet(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, service: Service) {
  put(sheet, top, 0, made.title.toUpperCase());
  const par = kit.random.whole(3, 6);
  const tubs = putRow(sheet, top, 2, ["par", par, "in hand", kit.random.whole(0, 2), "make"]);
  const make = put(sheet, top, 7, `=${a1(tubs[1]!)}-${a1(tubs[3]!)}`);
  const recipe = tub(kit, sheet, made, make);
  const end = recipe.total!.row;
  const next = facts(sheet, recipe, top + 1, service);
  const free = warnIn(sheet, recipe, { row: end + 1, column: 0 }, ["TELL FRONT OF HOUSE:", OWN]);
  return Math.max(free, next + 1) + 1;
}

/** Syrups kept in the walk-in, written up by the sous. */
function walkIn({ random, marked }: Kit, sheet: CorpusSheet, top: number): void {
  putRow(sheet, top, 0, [
    ...["syrups in the walk-in", "water (g)", "sugar (g)"],
    ...["sugar in it (%)", "sugar per 100 g water (g)"],
  ]);
  ["simple", "2 to 1", "thin, for granita"].forEach((name, index) => {
    const waterGrams = 100 * random.whole(8, 15);
    const sugarGrams = Math.round((waterGrams * [1, 2, 0.25][index]!) / 10) * 10;
    const perCent = Number(((100 * sugarGrams) / (waterGrams + sugarGrams)).toFixed(1));
    const strength = Number(((100 * sugarGrams) / waterGrams).toFixed(1));
    const cells = putRow(sheet, top + 1 + index, 0, [
      ...[name, waterGrams, sugarGrams, perCent, strength],
    ]);
    const [, water, sugar, share, perWater] = cells as [Spot, Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share });
  });
}

/** What to make before the weekend. */
function prep(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Fri prep");
  put(sheet, 0, 0, "Pastry section, Friday prep: sorbets");
  const temperatureC = -random.whole(12, 16);
  const drawer = given(kit, sheet, [1, 0], ["service drawer", "°C", temperatureC]);
  const portion = given(kit, sheet, [2, 0], ["portion, 2 quenelles", "g", random.pick([60, 70])]);
  const service = { drawer, temperatureC, portion };
  let top = 4;
  for (const made of boozyFirst(kit, 3)) {
    top = sorbet(kit, sheet, about(made, 2400), top, service);
  }
  walkIn(kit, sheet, top);
  note(kit, sheet, top + 5, 0, "Date dots on every lid. Oldest at the front.");
}

/** Prep lists of the pub kitchen. */
export const prepLists: readonly Layout[] = [
  { name: "pub kitchen, Friday prep of sorbets", language: "en", build: prep },
];
