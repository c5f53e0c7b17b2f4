import { a1, addSheet, fixed, put, putRow, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, ofAlcohol } from "../strollers/words";
import { VOICE_OF_A_SHOP, table } from "./words";

const OWN = { "Spirituose 40 % vol": "Obstbrand 40 % vol", Wasser: "Quellwasser" };

const BOTTLES = [
  ["Williamsbrand", 42],
  ["Himbeergeist", 40],
  ["Quittenbrand", 38],
  ["Kirschbrand", 43],
] as const;

/** What is poured into a day's ices, and how much alcohol that brings. */
function poured(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Brände im Eis, Samstag");
  const [heads, ...rows] = table(
    sheet,
    { row: 2, column: 0 },
    ["Flasche", "Alkohol % vol", "Schwund ml", "Zugabe (g)", "Alkohol darin (g)"],
    BOTTLES.map(([name, abv]) => [name, abv, kit.random.whole(2, 9), kit.random.whole(6, 30) * 5]),
  );
  const [strengths, grams] = [columnOf(rows, 1), columnOf(rows, 3)];
  const pure = beside(kit, heads![4]!, grams, {
    ...{ sheet, format: "0.0" },
    content: (spot, index) => `=RIME.ABVTOMASSFRACTION(${a1(strengths[index]!)})*${a1(spot)}`,
  });
  pure.forEach((alcohol, index) =>
    kit.marked.alcohols.push({ grams: grams[index]!, abv: strengths[index]!, alcohol }),
  );
  const row = 3 + BOTTLES.length;
  put(sheet, row, 0, "Summe");
  sumOf(kit, sheet, { row, column: 3 }, grams);
  sumOf(kit, sheet, { row, column: 4 }, pure, "0.0");
  note(kit, sheet, row + 2, 0, "Eis mit Brand bekommen Kinder, Schwangere und Autofahrer nicht.");
  note(kit, sheet, row + 3, 0, "Brennbuch liegt im Büro.");
}

const answersFor = (made: MadeRecipe): readonly Said[] => [
  ...ofAlcohol(made, "Reinalkohol (g)"),
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser aus allem (g)", states: "water", as: "formula", format: "0" },
  {
    label: "davon bei −18 °C gefroren (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    label: "Eis, bezogen auf die ganze Masse, bei −18 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** A mix with its share of each ingredient; gives the next free row. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  putRow(sheet, top, 0, ["Sorte", made.title]);
  const list = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    { heads: ["Bestandteil", "Gramm", "Anteil"], cells: (name, grams) => [name, grams] },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "Kessel");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const shares = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0%", fixed: [total] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, shares, "0.0%");
  const lines = { names, amounts, alsoAmounts: shares, total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  const next = say(sheet, recipe, { row: end + 1, column: 0 }, answersFor(made));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Härte" });
  return tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE_OF_A_SHOP) + 1;
}

/** A distillery that makes ices: what is poured, and the mixes behind. */
function brennerei(kit: Kit): void {
  poured(kit, addSheet(kit.marked.book, "Flaschen"));
  const sheet = addSheet(kit.marked.book, "Massen");
  put(sheet, 0, 0, "Eis aus der Brennerei");
  const mades = madeOf(kit, 2, isAlcoholic).map((made) => called(made, OWN));
  mades.reduce((top, made) => mix(kit, sheet, made, top), 2);
}

/** A distillery with a tasting room. */
export const brennereien: readonly Layout[] = [
  { name: "Brennerei, Flaschen gezählt und Massen dahinter", language: "de", build: brennerei },
];
