import { addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { down } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { solution } from "../solution";
import { itemsOf } from "../strollers/words";
import { formulaColumn, inColumn, inGerman, sayDown, smallTable } from "../sidings/words";

const VOICE = inGerman("Allergene:");

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt [°C]", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Gesamtwasser [g]", { states: "water", as: "formula", format: "0" }],
  ["gelöste Trockenmasse [g]", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "gefrorenes Wasser bei −12 °C [% des Wassers]",
    { states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  ],
];

interface Table {
  readonly items: readonly Spot[];
  readonly end: number;
}

/** Ein Rezept mit Gramm und Prozent nebeneinander. */
function pair(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, at: number, table: Table): void {
  const { items, end } = table;
  const column = 1 + 2 * at;
  put(sheet, 2, column, made.title);
  const [amountLabel, share] = putRow(sheet, 3, column, ["[g]", "[%]"]) as [Spot, Spot];
  const plan = { items, column, sumRow: end, unit: "g", format: "0", amountLabel, again: 1 };
  const grid = inColumn(kit, sheet, made, { ...plan, unit: "g" });
  const total = grid.recipe.total!;
  const rows = grid.all.map((spot) => [spot]);
  const content = (cell: (at: number) => string) => `${cell(0)}/${fixed(total)}*100`;
  const shares = formulaColumn(kit, sheet, share, rows, content, "0.0", [total]);
  sumOf(kit, sheet, { row: end, column: column + 1 }, shares, "0.0");
  sayDown(sheet, grid, FACTS, { row: end + 2, column, labels: 0 });
  nameTarget(sheet, grid.recipe, { row: end + 7, column });
  tellIn(sheet, grid.recipe, { row: end + 8, column }, VOICE);
}

/** Die drei Rezepte der Woche nebeneinander. */
function recipes(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Fachpraxis Speiseeis, Klasse KO 3b, Rezepte der Woche");
  const own = { Zucker: "Kristallzucker", Eigelb: "Hühnereigelb", Himbeeren: "Himbeeren TK" };
  const mades = kit.make(3).map((made) => called(made, own));
  put(sheet, 3, 0, "Rohstoff");
  const items = down(sheet, [4, 0], itemsOf(mades));
  const end = items.at(-1)!.row + 1;
  put(sheet, end, 0, "Gesamtmasse");
  down(sheet, [end + 7, 0], ["Beurteilungsziel", "Kennzeichnung"]);
  mades.forEach((made, at) => pair(kit, sheet, made, at, { items, end }));
  const groups = [
    ["Mo", "Gruppe 1", "Frau Lenz"],
    ["Di", "Gruppe 2", "Herr Oster"],
    ["Do", "Gruppe 3", "Frau Lenz"],
  ];
  smallTable(sheet, { row: 2, column: 9 }, ["Tag", "Eismaschine", "Aufsicht"], groups);
  note(kit, sheet, end + 10, 0, "Rohstoffe bis Freitag 10 Uhr im Lager anfordern.");
}

/** Was dazu im Unterricht gerechnet wird. */
function lesson(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Technologie: Gefrierpunkt einer Lösung berechnen");
  solution(kit, sheet, {
    ...{ top: 2, left: 0, count: 2, inputsFirst: true },
    headings: ["Stoff", "Masse (g)", "M (g/mol)", "Teilchenzahl i", "Teilchen (mol)"],
    words: {
      water: ["Masse Wasser (g)", "Masse Wasser"],
      constant: "kryoskopische Konstante Wasser (K·kg/mol)",
      depression: "Gefrierpunktserniedrigung (K)",
      freezingPoint: "Gefrierpunkt (°C)",
      proviso: (gap) => `Für ideal verdünnte Lösungen; hier beträgt der Fehler bis ${gap} K.`,
    },
  });
  note(kit, sheet, 14, 0, "Ergebnisse ins Heft");
  const rows = ["Note 1", "Note 2", "Note 3", "Note 4"].map((grade, at) => [grade, 20 - 3 * at]);
  smallTable(sheet, { row: 2, column: 7 }, ["Bewertung", "ab Punkten"], rows);
}

function build(kit: Kit): void {
  recipes(kit, addSheet(kit.marked.book, "Fachpraxis"));
  lesson(kit, addSheet(kit.marked.book, "Technologie"));
}

/** Eine Fachschule für Konditoren. */
export const fachschulpaare: readonly Layout[] = [
  { name: "Fachschule, drei Rezepte mit Gramm und Prozent nebeneinander", language: "de", build },
];
