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
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { rowsOf, WARNT } from "./words";

const TAGE = ["Montag", "Mittwoch", "Freitag"];

/** The plan of the week; gives the grams that each day needs. */
function plan(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Spot[] {
  const { random } = kit;
  put(sheet, 0, 0, "Produktionsplan Nachspeisen, Betriebsrestaurant");
  const heads = putRow(sheet, 2, 0, [
    ...["Tag", "Eis", "Blatt", "Essen", "g je Essen", "Bedarf (g)", "Froster 6:00 (°C)"],
  ]);
  const rows = mades.map((made, at) =>
    putRow(sheet, 3 + at, 0, [
      ...[TAGE[at]!, made.title, `Rezept ${TAGE[at]}`, 10 * random.whole(11, 38)],
      ...[random.pick([60, 70, 80]), undefined, shown(-random.whole(185, 224) / 10, "0.0")],
    ]),
  );
  const needs = beside(kit, heads[5]!, columnOf(rows, 3), {
    ...{ sheet, format: "#,##0" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 4 })}`,
  });
  const end = 3 + mades.length;
  put(sheet, end, 0, "Woche gesamt");
  sumOf(kit, sheet, { row: end, column: 3 }, columnOf(rows, 3));
  sumOf(kit, sheet, { row: end, column: 5 }, needs, "#,##0");
  temperatures(kit, heads[6]!, columnOf(rows, 6));
  rowsOf(sheet, { row: end + 2, column: 0 }, [
    ["Ausgabe", "11:30 bis 13:45 Uhr"],
    ["Frühdienst", "Küche 2", "ab 5:45 Uhr"],
    ["Spüldienst", "Küche 1", "bis 15:00 Uhr"],
  ]);
  note(kit, sheet, end + 6, 0, "Dienstag und Donnerstag gibt es Obst.");
  return needs;
}

const ERGEBNIS: readonly Said[] = [
  { label: "Gefrierpunkt in °C", states: "freezing point", as: "typed", decimals: 2 },
  { label: "Gefrierpunktserniedrigung in K", states: "depression", as: "formula" },
  { label: "Wasser im Grundrezept in g", states: "water", as: "typed", decimals: 0 },
  {
    label: "Zucker je 100 g Wasser in g",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  {
    label: "Gefrorener Anteil des Wassers bei −14 °C in %",
    ...{ states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  },
];

/** A day's recipe, scaled to what the plan needs; the figures over the list. */
function rezept(kit: Kit, made: MadeRecipe, tag: string, need: Spot): void {
  const sheet = addSheet(kit.marked.book, `Rezept ${tag}`);
  putRow(sheet, 0, 0, [tag, made.title]);
  const [, wanted] = putRow(sheet, 1, 0, ["laut Plan in g", `='Plan'!${a1(need)}`]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 11, column: 0 },
    {
      heads: ["Zutat", "Grundrezept", "Einheit", "abwiegen (kg)", "erledigt"],
      cells: (name, grams) => [name, grams, "g"],
    },
  );
  put(sheet, end + 1, 0, "Masse");
  const total = put(sheet, end + 1, 1, `=SUM(${span(amounts)})`);
  kit.marked.sums.push({ spot: total, parts: amounts });
  put(sheet, end + 1, 2, "g");
  const scaled = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [wanted!, total] },
    content: (spot) => `=${a1(spot)}*${fixed(wanted!)}/${fixed(total)}/1000`,
  });
  sumOf(kit, sheet, { row: end + 1, column: 3 }, scaled, "0.000");
  const unitCells = amounts.map((spot) => ({ ...spot, column: 2 }));
  const cells = { names, amounts, unitCells, alsoAmounts: scaled, unit: "g", total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[1]! });
  const next = say(sheet, recipe, { row: 3, column: 0 }, ERGEBNIS);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "ausgegeben als" });
  const last = tellIn(sheet, recipe, { row: end + 3, column: 0 }, WARNT);
  note(kit, sheet, last + 1, 0, "Rückstellprobe nehmen, 7 Tage aufheben.");
}

/** A canteen that makes ice three days a week. */
function kantine(kit: Kit): void {
  const own = { Zucker: "weißer Zucker", Vollmilch: "Vollmilch 3,5 %", Wasser: "Leitungswasser" };
  const mades = kit.make(3).map((made) => called(made, own));
  const needs = plan(kit, addSheet(kit.marked.book, "Plan"), mades);
  mades.forEach((made, at) => rezept(kit, made, TAGE[at]!, needs[at]!));
}

/** A canteen's plan and recipes. */
export const kantinenPlaene: readonly Layout[] = [
  {
    name: "Betriebsrestaurant, Produktionsplan mit Rezeptblättern",
    language: "de",
    build: kantine,
  },
];
