import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { namesOf } from "../layouts/marking";
import { sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { upTo } from "../strollers/words";
import { degrees, readings } from "./words";

const VOICE: Voice = {
  lead: "Allergene:",
  honey: "Honig drin, nichts für Babys unter 12 Monaten!",
  alcohol: "Mit Alkohol, nicht an Kinder, Schwangere oder wenn noch gefahren wird!",
  nuts: "Ganze Nüsse, Erstickungsgefahr bei Kindern unter 5 Jahren!",
  egg: "Rohes Eigelb, Masse auf 71 °C bringen oder pasteurisiertes kaufen!",
};

const SAGT: readonly (readonly [string, ResultPlan])[] = [
  ["Gefr.-Punkt °C", { states: "freezing point", as: "typed", decimals: 1 }],
  [
    "Eis v. Wasser bei −13 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  ],
  ["Zucker g/100 g Wasser", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

const HALTE: readonly (readonly [string, string, string])[] = [
  ["Siedlung Ost", "13:10", "13:30"],
  ["Freibad", "13:45", "15:15"],
  ["Spielplatz Mühlweg", "15:25", "15:50"],
  ["Neubaugebiet", "16:05", "16:40"],
  ["Sportplatz", "17:00", "18:30"],
];

/** The flavours, a row each, the ingredients over all of them. */
function sorten(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): number {
  const names = namesOf(mades);
  const amountLabel = put(sheet, 2, 0, "alles in kg");
  const items = putRow(sheet, 2, 1, names);
  const last = 1 + names.length;
  const heads = putRow(sheet, 2, last, [
    "Wanne",
    ...SAGT.map(([label]) => label),
    "als",
    "Aushang",
  ]);
  const recipes = mades.map((made, index) => {
    const row = 3 + index;
    put(sheet, row, 0, made.title);
    const plan = { items, unit: "kg", format: "0.000", amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    SAGT.forEach(([, each], at) =>
      resultAt(sheet, recipe, heads[1 + at]!, { row, column: last + 1 + at }, each),
    );
    nameTarget(sheet, recipe, { row, column: last + 4 });
    tellIn(sheet, recipe, { row, column: last + 5 }, VOICE);
    return recipe;
  });
  const end = 3 + mades.length;
  put(sheet, end, 0, "einkaufen");
  [...items.map(({ column }) => column), last].forEach((column) => {
    const parts = recipes.map(({ total }) => ({ ...total!, column }));
    sumOf(kit, sheet, { row: end, column }, parts, "0.000");
  });
  return end;
}

/** What has to be bought, at last week's prices. */
function einkauf(kit: Kit, sheet: CorpusSheet, end: number, count: number): void {
  const { random } = kit;
  put(sheet, end + 1, 0, "€ je kg");
  const row = (at: number): Spot[] =>
    Array.from({ length: count }, (_, index) => ({
      sheet: sheet.name,
      row: at,
      column: 1 + index,
    }));
  for (const { column } of row(end + 1)) {
    const isWater = sheet.cells[2]![column]!.content === "Leitungswasser";
    const price = isWater ? 0 : random.whole(110, 690) / 100;
    put(sheet, end + 1, column, shown(price, "0.00"));
  }
  put(sheet, end + 2, 0, "Einkauf, €");
  const cost = `=SUMPRODUCT(${span(row(end))},${span(row(end + 1))})`;
  const spot = put(sheet, end + 2, 1, shown(cost, "0.00"));
  const tubs = span([3, end - 1].map((at) => ({ ...spot, row: at, column: count + 1 })));
  put(sheet, end + 3, 0, "je Wanne im Schnitt, €");
  put(sheet, end + 3, 1, shown(`=${a1(spot)}/COUNT(${tubs})`, "0.00"));
}

/** An ice van: four tubs, what to buy for them, and the tour. */
function wagen(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Tour Dienstag");
  const words = { Zucker: "Kristallzucker", Wasser: "Leitungswasser", Himbeeren: "TK-Himbeeren" };
  const mades = kit.make(4).map((made) => called(upTo(made, 5000), words));
  put(sheet, 0, 0, "Eiswagen, vier Wannen und die Dienstagstour");
  const end = sorten(kit, sheet, mades);
  einkauf(kit, sheet, end, namesOf(mades).length);
  const rows = HALTE.map((stop) => [
    ...[...stop, kit.random.whole(12, 90), degrees(kit, -16, -12), degrees(kit, 21, 33)],
  ]);
  const heads = ["Halt", "an", "ab", "Kugeln", "Vitrine °C", "draußen °C"];
  const place = { row: end + 6, column: 0 };
  readings(kit, sheet, place, { heads, rows, temperatures: [4, 5] });
  const first = { sheet: sheet.name, row: end + 7, column: 3 };
  const balls = HALTE.map((_, index) => ({ ...first, row: first.row + index }));
  put(sheet, end + 12, 0, "Tour");
  sumOf(kit, sheet, { row: end + 12, column: 3 }, balls);
  note(kit, sheet, end + 14, 0, "Bei Regen fällt der Sportplatz aus, Glocke nur bis 19 Uhr.");
}

/** Sheets of an ice van. */
export const eiswaegen: readonly Layout[] = [
  { name: "Eiswagen, vier Wannen und die Tour", language: "de", build: wagen },
];
