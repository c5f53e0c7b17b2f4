import { a1, addSheet, fixed, put, putRow, shown, span, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { freezesAt, markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { temperatures } from "../strollers/words";
import { readings, rowsOf, WARNT } from "./words";

const STEP = 5;

/** A recipe for one cup of a kilogram and for all the cups of the banquet. */
function liste(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, at: number): MarkedRecipe {
  const left = STEP * at;
  put(sheet, 2, left, made.title);
  const cups = kit.random.whole(3, 9);
  const count = putRow(sheet, 3, left, ["Becher", cups])[1]!;
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 5, column: left },
    {
      heads: ["Zutat", "1 Becher [g]", "alle Becher [g]", "gewogen"],
      cells: (name, grams) => [name, grams],
    },
  );

  const scaled = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "#,##0", fixed: [count] },
    content: (spot) => `=${a1(spot)}*${fixed(count)}`,
  });
  put(sheet, end, left, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: left + 1 }, amounts);
  sumOf(kit, sheet, { row: end, column: left + 2 }, scaled, "#,##0");
  const cells = { names, amounts, alsoAmounts: scaled, unit: "g", total } as const;
  return markRecipe(kit, made, { ...cells, amountLabel: heads[1]! });
}

const WERTE: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpunkt [°C]", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Senkung gegen Wasser [K]", { states: "depression", as: "formula" }],
  ["Wasser im Becher [g]", { states: "water", as: "formula", format: "0" }],
  ["Gelöstes im Becher [g]", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Wasser als Eis bei −20 °C [%]",
    { states: "ice of water", as: "typed", temperatureC: -20, decimals: 0 },
  ],
  [
    "Eis in der Masse bei −9 °C [%]",
    { states: "ice of mix", as: "typed", temperatureC: -9, decimals: 0 },
  ],
];

/** What is known of the cups, on a page of its own. */
function werte(kit: Kit, recipes: readonly MarkedRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Werte");
  putRow(
    sheet,
    0,
    1,
    recipes.map(({ made }) => made.title),
  );
  WERTE.forEach(([words, plan], index) => {
    const label = put(sheet, 1 + index, 0, words);
    recipes.forEach((recipe, at) =>
      resultAt(sheet, recipe, label, { row: label.row, column: 1 + at }, plan, (each) =>
        [each.names, each.amounts].map((spots) => `Becher!${span(spots)}`).join(","),
      ),
    );
  });
  const row = 1 + WERTE.length;
  putRow(sheet, row, 0, ["Anrichten als"]);
  putRow(sheet, row + 1, 0, ["Menükarte"]);
  recipes.forEach((recipe, at) => {
    nameTarget(sheet, recipe, { row, column: 1 + at });
    tellIn(sheet, recipe, { row: row + 1, column: 1 + at }, WARNT);
  });
  readings(
    kit,
    sheet,
    { row: row + 4, column: 0 },
    {
      heads: ["Tiefkühler Patisserie", "gelesen [°C]"],
      when: ["Mo früh", "Mo spät", "Di früh", "Di spät"],
      tenths: [-226, -194],
    },
  );
}

/** The syrups that are always there. */
function sirupe(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Läuterzucker");
  const heads = putRow(sheet, 0, 0, [
    ...["Flasche", "Zucker [g]", "Wasser [g]", "Zucker auf 100 g Wasser [g]"],
    ...["Zucker in der Lösung [Massen-%]", "gefriert ab [°C]"],
  ]);
  const rows = ["dünn", "mittel", "zum Tränken"].map((word, index) => {
    const water = 500 * random.whole(1, 3);
    const sugar =
      Math.round((water * random.between(0.2 + 0.2 * index, 0.38 + 0.2 * index)) / 10) * 10;
    return putRow(sheet, 1 + index, 0, [
      ...[word, sugar, water, shown(Number(((100 * sugar) / water).toFixed(1)), "0.0")],
      shown(Number(((100 * sugar) / (water + sugar)).toFixed(1)), "0.0"),
      shown(freezesAt(["sucrose", "water"], [sugar, water]), "0.0"),
    ]);
  });
  for (const [, sugar, water, perWater, share] of rows) {
    const cells = { sugar: sugar!, water: water!, perWater: perWater!, share: share! };
    marked.strengths.push(cells);
  }
  temperatures(kit, heads[5]!, columnOf(rows, 5));
  note(kit, sheet, 5, 0, "Kalt abfüllen, Flasche mit Datum kleben.");
}

/** A hotel that freezes its mixes in cups. */
function hotel(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Becher");
  put(sheet, 0, 0, "Bankett Samstag: Eis aus Bechern zu 1 kg");
  const own = { Zucker: "Feinzucker", Eigelb: "Eidotter", Haselnüsse: "Haselnusskerne" };
  const mades = kit.make(3).map((made) => called(perKilogram(made), own));
  const recipes = mades.map((made, at) => liste(kit, sheet, made, at));
  rowsOf(sheet, { row: 16, column: 0 }, [
    ["Posten", "Wer", "Ab"],
    ["Eis", "Lehrling 2. Jahr", "14 Uhr"],
    ["Teller", "Sous-Chef", "19 Uhr"],
  ]);
  werte(kit, recipes);
  sirupe(kit);
}

/** A hotel's pastry kitchen. */
export const hotelBecher: readonly Layout[] = [
  {
    name: "Hotelpatisserie, Becher zum Bankett, Werte auf eigenem Blatt",
    language: "de",
    build: hotel,
  },
];
