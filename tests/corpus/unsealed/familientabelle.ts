import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { anchored } from "../layouts/marking";
import { down } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import {
  degrees,
  inColumn,
  inGerman,
  price,
  readings,
  sayDown,
  smallTable,
} from "../sidings/words";

const VOICE = inGerman("Drin ist:");

const FACTS: readonly Fact[] = [
  ["gefriert ab (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  [
    "vom Wasser gefroren bei −18 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
  ["Wasser darin insgesamt (g)", { states: "water", as: "formula", format: "0" }],
];

/** Was ein Kilo zuletzt gekostet hat. */
function prices(kit: Kit, sheet: CorpusSheet, items: readonly Spot[], column: number): Spot[] {
  put(sheet, 2, column, "Preis €/kg");
  return items.map(({ row, column: at }) =>
    put(sheet, row, column, shown(price(kit, String(sheet.cells[row]![at]!.content)), "0.00")),
  );
}

interface Table {
  readonly items: readonly Spot[];
  readonly prices: readonly Spot[];
  readonly amountLabel: Spot;
}

/** Eine Sorte in ihrer Spalte. */
function sort(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, table: Table): void {
  const end = table.items.at(-1)!.row + 1;
  put(sheet, 2, column, made.title);
  const plan = { ...table, column, sumRow: end, unit: "g", format: "0" } as const;
  const grid = inColumn(kit, sheet, made, plan);
  const cost = `=SUMPRODUCT(${span(grid.all)},${anchored(span(table.prices))})/1000`;
  put(sheet, end + 1, column, shown(cost, "0.00"));
  put(sheet, end + 2, column, shown(`=${a1({ ...grid.all[0]!, row: end })}/80`, "0.0"));
  sayDown(sheet, grid, FACTS, { row: end + 4, column, labels: 0 });
  nameTarget(sheet, grid.recipe, { row: end + 7, column });
  tellIn(sheet, grid.recipe, { row: end + 8, column }, VOICE);
}

/** Wer wann Eis gemacht hat und wie kalt das Fach war. */
function log(kit: Kit, sheet: CorpusSheet, row: number): void {
  put(sheet, row, 0, "Wann gemacht");
  const who = ["Oma", "Jonas", "Papa", "Oma", "alle zusammen"];
  const days = ["03.05.", "17.05.", "31.05.", "14.06.", "28.06."];
  const { heads, rows } = smallTable(
    sheet,
    { row: row + 1, column: 0 },
    ["Tag", "wer", "Gefrierfach (°C)"],
    days.map((day, at) => [day, who[at], degrees(kit, -20, -15)]),
  );
  readings(
    kit,
    heads[2]!,
    rows.map((cells) => cells[2]!),
  );
}

/** Vier Sorten, die eine Familie jedes Jahr macht. */
function build(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis");
  put(sheet, 0, 0, "Unser Eis – was wir immer wieder machen");
  const own = { Zucker: "Haushaltszucker", Vollmilch: "Vollmilch 3,5 %", Salz: "Speisesalz" };
  const mades = kit.make(4).map((made) => called(made, own));
  const amountLabel = putRow(sheet, 2, 0, ["Zutat (alles in g)"])[0]!;
  const items = down(sheet, [3, 0], itemsOf(mades));
  const end = items.at(-1)!.row + 1;
  down(sheet, [end, 0], ["zusammen (g)", "kostet etwa (€)", "Kugeln zu 80 g"]);
  down(sheet, [end + 7, 0], ["am liebsten", "für Gäste"]);
  const table = { items, amountLabel, prices: prices(kit, sheet, items, 6) };
  mades.forEach((made, at) => sort(kit, sheet, made, 1 + at, table));
  log(kit, sheet, end + 11);
  note(kit, sheet, end + 11, 4, "Die kleine Dose ist bei Tante Hilde, zurückholen!");
}

/** Eine Familie, die vier Sorten macht. */
export const familientabellen: readonly Layout[] = [
  { name: "Familie, vier Sorten in einer Tabelle mit Preisen", language: "de", build },
];
