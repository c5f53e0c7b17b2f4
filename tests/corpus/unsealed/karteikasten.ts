import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { stimme } from "../settled/stimme";
import { alsoAlcohol, halfDegrees, table } from "../settled/words";

const OWN = {
  ...{ Zucker: "Kristallzucker", Vollmilch: "Vollmilch 3,5 %", Wasser: "Leitungswasser" },
  ...{ "Sahne 35 %": "Schlagsahne 35 %", Magermilchpulver: "MMP" },
};

const SAID: readonly Said[] = [
  { label: "Gefriert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser je kg Mix (g)", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "Zuckerarten je 100 g Wasser (g)", states: "sugar per 100 g water" },
    ...{ as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Eis im Mix in der Theke, −13 °C (%)", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -13, decimals: 0 },
  },
];

const ALKOHOL: Said = {
  ...{ label: "Alkohol je kg Mix (g)", states: "alcohol", as: "typed", decimals: 1 },
};

/** One card, five columns wide. */
function karte(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, left: number, factor: Spot): number {
  putRow(sheet, 4, left, [made.title, undefined, "Karte", kit.random.whole(11, 98)]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 5, column: left },
    {
      heads: ["Zutat", "1 kg Mix, in g", "heute, in g"],
      cells: (name, grams) => [name, grams],
    },
  );
  put(sheet, end, left, "zusammen");
  const total = sumOf(kit, sheet, { row: end, column: left + 1 }, amounts);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [factor] },
    content: (spot) => `=${a1(spot)}*${fixed(factor)}`,
  });
  sumOf(kit, sheet, { row: end, column: left + 2 }, alsoAmounts, "0");
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[1]!, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  const place = { row: end + 2, column: left };
  const next = say(sheet, recipe, place, alsoAlcohol(made, SAID, ALKOHOL));
  nameTarget(sheet, recipe, { row: next, column: left, label: "Ziel" });
  return tellIn(sheet, recipe, { row: next + 1, column: left }, stimme("Kennzeichnung:"));
}

/** What the display case read through the week. */
function vitrine(kit: Kit, sheet: CorpusSheet, row: number): number {
  const tage = ["Mo", "Di", "Mi", "Do", "Fr", "Sa"];
  const rows = tage.map((tag) => [
    ...[tag, shown(halfDegrees(kit, -14, -11), "0.0"), shown(halfDegrees(kit, -15, -12), "0.0")],
    kit.random.pick(["Ro", "Gi", "Ka"]),
  ]);
  const heads = ["Tag", "Vitrine 9 Uhr (°C)", "Vitrine 20 Uhr (°C)", "Zeichen"];
  const list = table(sheet, { row, column: 0 }, heads, rows);
  [1, 2].forEach((at) => temperatures(kit, list.heads[at]!, columnOf(list.rows, at)));
  return list.end;
}

/** Two cards beside each other, the display case under them. */
function karteikasten(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kasten 2");
  put(sheet, 0, 0, "Eisdiele, aus dem Karteikasten abgetippt");
  const value = kit.random.whole(4, 9);
  const words = { label: "Mix heute (kg)", bare: "Mix heute", value };
  const factor = input(kit, sheet, { row: 2, column: 0 }, words);
  const mades = kit.make(2).map((made) => called(perKilogram(made), OWN));
  const ends = mades.map((made, index) => karte(kit, sheet, made, 5 * index, factor));
  const end = vitrine(kit, sheet, Math.max(...ends) + 2);
  note(kit, sheet, end + 1, 0, "Karten mit Fettfleck sind neu geschrieben.");
}

/** An ice parlour with an old card box. */
export const karteikaesten: readonly Layout[] = [
  {
    ...{ name: "Eisdiele, zwei Karten aus dem Kasten und die Vitrine", language: "de" },
    build: karteikasten,
  },
];
