import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { kilos } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { asTemperatures, rowsAt, tellAt, told, type OwnWords } from "./words";

const HINWEISE: OwnWords = [
  [/^Honig/, "Mit Honig: Babys unter 12 Monaten bekommen nichts davon."],
  [/^Enthält Alkohol/, "Mit Alkohol: nur für Erwachsene, nicht für Schwangere, nicht wer fährt."],
  [/^Ganze Nüsse/, "Ganze Nüsse: Kinder unter 5 Jahren können daran ersticken."],
  [/^Rohes Eigelb/, "Rohes Eigelb: auf 71 °C zur Rose abziehen oder pasteurisiert kaufen."],
];

const WERTE: readonly Said[] = [
  { label: "fängt an zu gefrieren bei °C", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "Eis im Gemisch bei −13 °C, in %",
    states: "ice of mix",
    as: "typed",
    temperatureC: -13,
  },
  { label: "Zucker auf 100 g Wasser, in g", states: "sugar per 100 g water", as: "formula" },
];

/** Kilograms with their unit behind each number. */
const KILO = '0.000" kg"';

/** One ice: its total above the list, kilograms, the same for the whole course at the right. */
function abschnitt(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  [top, index]: readonly [number, number],
  factor: Spot,
): number {
  put(sheet, top, 0, `${index + 1}) ${made.title}`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 2, column: 0 },
    {
      heads: ["Zutat", "eine Gruppe", "ganzer Kurs"],
      cells: (name, grams) => [name, shown(inUnit(grams, "kg"), KILO)],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: KILO, fixed: [factor] },
    content: (spot) => `=${a1(spot)}*${fixed(factor)}`,
  });
  put(sheet, top + 1, 0, "Masse insgesamt");
  const total = sumOf(kit, sheet, { row: top + 1, column: 1 }, amounts, KILO);
  sumOf(kit, sheet, { row: top + 1, column: 2 }, alsoAmounts, KILO);
  const cells = { names, amounts, alsoAmounts, amountLabel: heads[1]!, total };
  const recipe = markRecipe(kit, made, { ...cells, unit: "kg" });
  const next = say(sheet, recipe, { row: top + 2, column: 4 }, WERTE);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "gedacht als" });
  return tellAt(sheet, recipe, { row: end, column: 0 }, told(made, "Allergene:", HINWEISE)) + 2;
}

/** Who comes, what it costs, and how cold the school's freezers are. */
function rahmen(kit: Kit, sheet: CorpusSheet): Spot {
  const factor = putRow(sheet, 2, 0, ["Gruppen", kit.random.whole(3, 5)])[1]!;
  const beitrag = shown(kit.random.whole(26, 38) / 2, "0.00");
  rowsAt(sheet, { row: 3, column: 0 }, [
    ["Kursbeitrag (€)", beitrag],
    ["Beginn", "18:30 Uhr"],
  ]);
  const heads = putRow(sheet, 2, 4, ["Truhe", "Anzeige °C"]);
  const rows = rowsAt(
    sheet,
    { row: 3, column: 4 },
    ["Lehrküche 1", "Keller"].map((name) => [name, -kit.random.whole(17, 24)]),
  );
  asTemperatures(kit, heads[1]!, columnOf(rows, 1));
  return factor;
}

/** Three ices one below the other. */
function vhs(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kursabend");
  put(sheet, 0, 0, "VHS: Eis ohne Fertigpulver, zweiter Abend");
  const factor = rahmen(kit, sheet);
  const eigene = { Zucker: "Kristallzucker", Vollmilch: "Vollmilch 3,5 %", Honig: "Blütenhonig" };
  const mades = kit.make(3).map((made) => called(kilos(made), eigene));
  const end = mades.reduce(
    (top, made, index) => abschnitt(kit, sheet, made, [top, index], factor),
    7,
  );
  note(kit, sheet, end, 0, "Alle drei Massen am Vortag ansetzen, sie müssen kalt sein.");
}

/** An evening course at an adult education centre. */
export const vhsEis: readonly Layout[] = [
  { name: "VHS-Kurs, drei Eise in Kilogramm", language: "de", build: vhs },
];
