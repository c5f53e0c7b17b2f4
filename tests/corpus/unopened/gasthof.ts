import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { DEUTSCH, thermometer } from "./words";

const WIRT: Voice = {
  ...DEUTSCH,
  lead: "In der Speisekarte vermerken:",
  alcohol: "Da ist Alkohol drin: nicht für Kinder, Schwangere und Autofahrer.",
};

const SAID: readonly Said[] = [
  { label: "gefriert ab (°C)", states: "freezing point", as: "formula", format: "0.0" },
  {
    label: "% vom Wasser sind Eis, Truhe -16 °C",
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
  {
    label: "Eis in % der Masse, Truhe -16 °C",
    ...{ states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
  },
  { label: "Zucker gesamt, % der Masse", states: "sugar share", as: "typed", decimals: 1 },
];

/** One kind of ice, answers over its list. */
function kind(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number): number {
  put(sheet, 2, column, made.title);
  const list = listed(
    sheet,
    made,
    { row: 9, column },
    {
      heads: ["was", "g"],
      cells: (item, grams) => [item, grams],
    },
  );
  const { names, amounts, heads, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: column + 1 }, amounts);
  put(sheet, end, column, "zusammen");
  const cells = { names, amounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  say(sheet, recipe, { row: 3, column }, SAID);
  nameTarget(sheet, recipe, { row: 7, column, label: "gedacht für" });
  return tellIn(sheet, recipe, { row: end + 1, column }, WIRT);
}

const SOLD = ["Mai", "Juni", "Juli", "August", "September"];

/** Scoops sold, and when the house is open. */
function season(kit: Kit, sheet: CorpusSheet, row: number): void {
  const heads = ["Monat", "Kugeln im Haus", "Kugeln im Garten"];
  putRow(sheet, row, 0, heads);
  const rows = SOLD.map((month, index) =>
    putRow(sheet, row + 1 + index, 0, [
      ...[month, kit.random.whole(180, 420), kit.random.whole(240, 900)],
    ]),
  );
  put(sheet, row + 6, 0, "Saison");
  [1, 2].forEach((at) => sumOf(kit, sheet, { row: row + 6, column: at }, columnOf(rows, at)));
  putRow(sheet, row, 4, ["Geöffnet", "von", "bis"]);
  putRow(sheet, row + 1, 4, ["Mi bis Fr", "17 Uhr", "22 Uhr"]);
  putRow(sheet, row + 2, 4, ["Sa, So", "11 Uhr", "21 Uhr"]);
  putRow(sheet, row + 4, 4, ["Kugel (EUR)", shown(1.9, "0.00")]);
  putRow(sheet, row + 5, 4, ["mit Sahne (EUR)", shown(2.6, "0.00")]);
}

/** Three kinds beside each other, the season below. */
function gasthof(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis 2024");
  put(sheet, 0, 0, "Hauseis Gasthof, Rezepte für die Maschine (eine Füllung)");
  const own = { Zucker: "Kristallzucker", Honig: "Bienenhonig", Heidelbeeren: "Blaubeeren" };
  const ends = kit.make(3).map((made, at) => kind(kit, sheet, called(made, own), 3 * at));
  const row = Math.max(...ends) + 2;
  season(kit, sheet, row);
  const next = thermometer(
    kit,
    sheet,
    { row: row + 9, column: 0 },
    {
      heads: ["Truhe abgelesen am", "Temp. früh °C", "Temp. abends °C"],
      lines: ["3. Juli", "4. Juli", "5. Juli", "6. Juli", "7. Juli"],
      from: [
        [-19, -16],
        [-18, -14],
      ],
    },
  );
  note(kit, sheet, next + 1, 0, "Truhe im Garten nicht in die Sonne stellen!");
}

/** An inn's ices. */
export const gasthoefe: readonly Layout[] = [
  { name: "Gasthof, drei Sorten nebeneinander und die Saison", language: "de", build: gasthof },
];
