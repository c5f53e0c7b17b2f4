import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { boozyFirst } from "../lodgers/words";
import { itemsOf } from "../strollers/words";
import { VOICES } from "./voices";
import { below, readings } from "./words";

const FACTS: readonly Fact[] = [
  ["freezing point, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["depression, K", { states: "depression", as: "typed" }],
  ["water frozen at −18 °C, %", { states: "ice of water", as: "typed", temperatureC: -18 }],
  ["ice at −12 °C, % of mix", { states: "ice of mix", as: "typed", temperatureC: -12 }],
  ["sugar per 100 g water, g", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

/** Recipes in columns, in kilograms; what is known of each under its sum. */
function recipes(kit: Kit, sheet: CorpusSheet): void {
  const words = { sugar: "caster sugar", "vodka 40 %": "vodka 40% ABV", honey: "clear honey" };
  const mades = boozyFirst(kit, 4).map((made) => called(made, words));
  put(sheet, 0, 0, "ices for dinner parties");
  putRow(sheet, 1, 1, ["no. 1", "no. 2", "no. 3", "no. 4"]);
  const amountLabel = put(sheet, 2, 0, "kg of");
  const names = itemsOf(mades);
  const items = below(sheet, { row: 3, column: 0 }, names);
  const end = 3 + names.length;
  put(sheet, end, 0, "batch, kg");
  put(sheet, end + 7, 0, "meant to be");
  put(sheet, end + 8, 0, "say on the menu");
  mades.forEach((made, index) => {
    const column = 1 + index;
    put(sheet, 2, column, made.title);
    const plan = { items, left: 1, unit: "kg", format: "0.000", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    factsDown(sheet, recipe, FACTS, { row: end + 2, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 7, column });
    tellIn(sheet, recipe, { row: end + 8, column }, VOICES.dinner);
  });
  put(sheet, 2, 6, "kg to buy for one of each");
  const rows = items.map(({ row }) =>
    mades.map((_, at) => ({ sheet: sheet.name, row, column: 1 + at })),
  );
  rows.forEach((parts, index) => sumOf(kit, sheet, { row: 3 + index, column: 6 }, parts, "0.000"));
  note(kit, sheet, end + 10, 0, "no. 1 is the one they ask for. Older versions are on paper.");
}

const BOTTLES = [
  ["dark rum", 40, 20],
  ["sparkling wine", 11.5, 150],
  ["elderflower liqueur", 20, 40],
  ["dry cider", 5, 220],
] as const;

/** Bottles and what they bring. */
function bottles(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(
    sheet,
    0,
    0,
    "bottle to ethanol (alcohol: adults only, not when pregnant or driving; wine and cider: sulphites)",
  );
  const heads = putRow(sheet, 2, 0, ["bottle", "vol %", "grams in", "of it ethanol, g"]);
  const rows = BOTTLES.map(([bottle, strength, usual], index) => {
    const used = usual + 5 * random.whole(0, 6);
    const [, abv, grams] = putRow(sheet, 3 + index, 0, [bottle, shown(strength, "0.0"), used]);
    const formula = `=${a1(grams!)}*RIME.ABVTOMASSFRACTION(${a1(abv!)})`;
    const alcohol = put(sheet, 3 + index, 3, shown(formula, "0.0"));
    marked.alcohols.push({ grams: grams!, abv: abv!, alcohol });
    return [grams!, alcohol];
  });
  marked.formulaColumns.push({ spots: columnOf(rows, 1), heading: heads[3]!, fixed: [] });
  const end = 3 + rows.length;
  put(sheet, end, 0, "all four");
  [0, 1].forEach((at) =>
    sumOf(kit, sheet, { row: end, column: 2 + at }, columnOf(rows, at), "0.0"),
  );
}

const SYRUPS = ["for granita", "for sorbet", "for bars"];

/** Syrups kept in the fridge, and the fridge and freezer themselves. */
function syrups(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "sugar syrups in the fridge");
  const names = ["jar", "sucrose, g", "water, g", "g sugar to 100 g water", "sugar, mass %"];
  putRow(sheet, 1, 0, names);
  SYRUPS.forEach((jar, index) => {
    const [sugarGrams, waterGrams] = [random.whole(12, 18) * 10 + 120 * index, 500];
    const perWater = shown(Number(((100 * sugarGrams) / waterGrams).toFixed(1)), "0.0");
    const whole = sugarGrams + waterGrams;
    const share = shown(Number(((100 * sugarGrams) / whole).toFixed(1)), "0.0");
    const cells: Spot[] = putRow(sheet, 2 + index, 0, [
      jar,
      sugarGrams,
      waterGrams,
      perWater,
      share,
    ]);
    const [, sugar, water, per, part] = cells;
    marked.strengths.push({ sugar: sugar!, water: water!, perWater: per!, share: part! });
  });
  const heads = putRow(sheet, 7, 0, ["checked", "fridge, °C", "freezer, °C"]);
  below(sheet, { row: 8, column: 0 }, ["Mon", "Wed", "Fri", "Sun"]);
  readings(kit, sheet, heads[1]!, { count: 4, from: 3, to: 6 });
  readings(kit, sheet, heads[2]!, { count: 4, from: -21, to: -16 });
  note(kit, sheet, 13, 0, "throw syrup away after a fortnight");
}

/** Recipes in columns, bottles and syrups. */
function columnsInKilos(kit: Kit): void {
  const { book } = kit.marked;
  recipes(kit, addSheet(book, "recipes"));
  bottles(kit, addSheet(book, "bottles"));
  syrups(kit, addSheet(book, "syrups"));
}

/** Old recipes of someone who likes a drop in the ice. */
export const columnsInKilosSheets: readonly Layout[] = [
  { name: "dinner-party ices in columns of kilograms", language: "en", build: columnsInKilos },
];
