import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { anchored, hundred, namesOf } from "../layouts/marking";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { rowsAt, tellAt, told } from "./words";

const ANTWORTEN: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["Wasseranteil, g auf 100 g", { states: "water", as: "typed", decimals: 1 }],
  ["Gefrierpunktserniedrigung, K", { states: "depression", as: "typed", decimals: 2 }],
  ["Gefrierpunkt, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  [
    "ausgefrorenes Wasser bei −10 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -10, decimals: 0 },
  ],
  [
    "ausgefrorenes Wasser bei −20 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -20, decimals: 0 },
  ],
];

const TOP = 4;

interface Tafel {
  readonly items: readonly Spot[];
  readonly labels: readonly Spot[];
}

/** One ice in its column: shares, sum, answers, what it is for, what to tell. */
function spalte(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, tafel: Tafel) {
  const { items, labels } = tafel;
  put(sheet, TOP - 2, column, made.title);
  const amountLabel = put(sheet, TOP - 1, column, "Massen-%");
  const { cells } = sheet;
  const own = made.names.map((name) =>
    items.find((item) => cells[item.row]?.[item.column]?.content === name)!,
  );
  const amounts = own.map(({ row }, index) =>
    put(sheet, row, column, shown(made.grams[index]!, "0.0")),
  );
  const end = TOP + items.length;
  const parts = items.map(({ row }) => ({ sheet: sheet.name, row, column }));
  const range = span(parts);
  const total = put(sheet, end, column, shown(`=SUM(${range})`, "0.0"));
  kit.marked.sums.push({ spot: total, parts: amounts });
  const lines = { names: own, amounts, unit: "%", shared: true, amountLabel, total } as const;
  const recipe: MarkedRecipe = markRecipe(kit, made, lines);
  const shares = { heading: amountLabel, spots: amounts, total, kind: "per cent" } as const;
  kit.marked.numberColumns.push(shares);
  const calls = (): string => `${anchored(span(items))},${range}`;
  ANTWORTEN.forEach(([, plan], index) => {
    const label = labels[index]!;
    resultAt(sheet, recipe, label, { row: label.row, column }, plan, calls);
  });
  const { row } = labels.at(-1)!;
  nameTarget(sheet, recipe, { row: row + 1, column });
  tellAt(sheet, recipe, { row: row + 2, column }, told(made, "enthält"));
}

/** What tasters noted, a line each. */
function verkostung(kit: Kit, mades: readonly MadeRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Verkostung");
  put(sheet, 0, 0, "Punkte von 1 (gar nicht) bis 6 (sehr), blind verkostet");
  putRow(sheet, 2, 0, ["Platz", ...mades.map(({ title }) => title)]);
  const rows = rowsAt(
    sheet,
    { row: 3, column: 0 },
    [1, 2, 3, 4, 5, 6].map((seat) => [seat, ...mades.map(() => kit.random.whole(2, 6))]),
  );
  put(sheet, 9, 0, "Summe");
  mades.forEach((_, index) =>
    sumOf(kit, sheet, { row: 9, column: 1 + index }, columnOf(rows, 1 + index)),
  );
  note(kit, sheet, 11, 0, "Platz 4 war erkältet.");
}

/** Three ices in one table of shares. */
function konditoren(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Vergleich");
  put(sheet, 0, 0, "Konditoren, 3. Lehrjahr: Welches Eis bleibt in der Truhe stichfest?");
  const eigene = { Wasser: "Leitungswasser", Zucker: "Rübenzucker", Salz: "Speisesalz" };
  const mades = kit.make(3).map((made) => called(hundred(made), eigene));
  put(sheet, TOP - 1, 0, "Rohstoff");
  const items = namesOf(mades).map((name, index) => put(sheet, TOP + index, 0, name));
  const end = TOP + items.length;
  put(sheet, end, 0, "zusammen");
  const labels = ANTWORTEN.map(([words], index) => put(sheet, end + 2 + index, 0, words));
  put(sheet, end + 2 + labels.length, 0, "Ziel");
  put(sheet, end + 3 + labels.length, 0, "Deklaration");
  mades.forEach((made, index) => {
    spalte(kit, sheet, made, 1 + index, { items, labels });
  });
  note(kit, sheet, end + 6 + labels.length, 0, "Erst schätzen lassen, dann die Zahlen aufdecken.");
  verkostung(kit, mades);
}

/** Confectioners at their vocational school. */
export const konditorklassen: readonly Layout[] = [
  { name: "Konditorklasse, drei Eise in Massenprozent", language: "de", build: konditoren },
];
