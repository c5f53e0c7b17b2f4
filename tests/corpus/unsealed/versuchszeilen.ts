import { addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Fact } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { again, hundred } from "../layouts/marking";
import { changed, plainOf } from "../lodgers/swaps";
import { given } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import {
  degrees,
  formulaColumn,
  inGerman,
  inRow,
  readings,
  sayAlong,
  smallTable,
  type InGrid,
} from "../sidings/words";

const VOICE = inGerman("Zutatenliste hervorheben:");

const FACTS = (temperature: Spot): readonly Fact[] => [
  ["Gefrierbeginn in °C", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Erniedrigung in K", { states: "depression", as: "typed" }],
  [
    "Eis in % der Mischung, Lagerung",
    { states: "ice of mix", as: "formula", format: "0.0", temperature, temperatureC: -18 },
  ],
  ["Wasser, g in 100 g", { states: "water", as: "typed", decimals: 1 }],
];

/** Sechs Versuche an einem Eis. */
function trials(kit: Kit): readonly MadeRecipe[] {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  const list = [
    ...[made, again(kit, plain), changed(plain, 0.9), changed(plain, 0.8)],
    ...[changed(plain, 0.7, "dextrose monohydrate"), again(kit, plain)],
  ];
  const own = { Zucker: "Kristallzucker", Zitronensaft: "Zitronensaft, frisch", Salz: "Kochsalz" };
  return list.map((each) => called(hundred(each), own));
}

const DATES = ["12.02.", "12.02.", "19.02.", "26.02.", "05.03.", "12.03."];
const OPINIONS = [
  "Ausgangsrezept",
  "wiederholt",
  "etwas fester",
  "zu hart",
  "weich, gut",
  "Muster",
];

interface Table {
  readonly items: readonly Spot[];
  readonly heads: readonly Spot[];
  readonly facts: readonly Fact[];
}

/** Ein Versuch in seiner Zeile, die Summe vor den Zutaten. */
function trial(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, at: number, table: Table): InGrid {
  const { items, heads, facts } = table;
  const row = 5 + at;
  putRow(sheet, row, 0, [`V${at + 1}`, DATES[at]]);
  const amountLabel = { sheet: sheet.name, row: 3, column: 3 };
  const plan = { items, row, sumColumn: 2, unit: "%", format: "0.0", amountLabel } as const;
  const grid = inRow(kit, sheet, made, plan);
  const { column } = heads[0]!;
  sayAlong(sheet, grid, facts, { row, column }, heads);
  nameTarget(sheet, grid.recipe, { row, column: column + 4 });
  put(sheet, row, column + 5, OPINIONS[at]);
  tellIn(sheet, grid.recipe, { row, column: column + 6 }, VOICE);
  return grid;
}

/** Die Versuche untereinander. */
function table(kit: Kit, sheet: CorpusSheet): void {
  const mades = trials(kit);
  put(sheet, 0, 0, `Versuchsreihe ${mades[0]!.title}, Tiefkühlregal`);
  const temperature = given(kit, sheet, [1, 0], ["Lagerung beim Kunden", "°C", -18]);
  const facts = FACTS(temperature);
  const names = itemsOf(mades);
  put(sheet, 3, 3, "Massen-%");
  putRow(sheet, 4, 0, ["Nr.", "Datum", "Summe"]);
  const items = putRow(sheet, 4, 3, names);
  const heads = putRow(sheet, 4, 4 + names.length, [
    ...[...facts.map(([words]) => words), "Vorgabe", "Befund", "Etikett"],
  ]);
  mades.forEach((made, at) => trial(kit, sheet, made, at, { items, heads, facts }));
  note(kit, sheet, 12, 0, "Muster V6 liegt in Schrank 2, oberstes Fach.");
}

/** Wie weit die Fühler danebenliegen. */
function probes(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Fühler im Eiswasser geprüft am 10.02.");
  const bath = given(kit, sheet, [2, 0], ["Eiswasser", "°C", 0, "0.0"]);
  const { heads, rows } = smallTable(
    sheet,
    { row: 4, column: 0 },
    ["Fühler", "zeigt (°C)", "Abweichung (K)"],
    ["Stich 1", "Stich 2", "Schrank 1", "Schrank 2", "Kutter"].map((name) => [
      ...[name, degrees(kit, -1, 1)],
    ]),
  );
  const [, shows] = heads as [Spot, Spot];
  readings(
    kit,
    shows,
    rows.map((cells) => cells[1]!),
  );
  const content = (cell: (at: number) => string) => `${cell(1)}-$B$${bath.row + 1}`;
  formulaColumn(kit, sheet, heads[2]!, rows, content, "0.0", [bath]);
}

function build(kit: Kit): void {
  table(kit, addSheet(kit.marked.book, "Versuche"));
  probes(kit, addSheet(kit.marked.book, "Fühler"));
}

/** Ein Entwickler, der jeden Versuch in eine Zeile schreibt. */
export const versuchszeilen: readonly Layout[] = [
  { name: "Entwickler, sechs Versuche untereinander in Massenprozent", language: "de", build },
];
