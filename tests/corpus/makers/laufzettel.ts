import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { banner, log, UNSERE } from "./words";

/** Rows from one slip to the next. */
const STEP = 10;
/** The column behind the longest list. */
const SUM = 8;

const SAID: readonly Said[] = [
  { label: "friert ab (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "ΔT gegen Wasser (K)", states: "depression", as: "typed", decimals: 2 },
  { label: "Wasser, alles (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Zucker (% der Masse)", states: "sugar share", as: "formula", format: "0.0" },
  {
    label: "Eis bei −11 °C (% der Masse)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -11, decimals: 0 },
  },
];

/** One slip: the list runs across, the tub's amounts below the sample's. */
function slip(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, factor: Spot): void {
  banner(sheet, top, [0, SUM], made.title);
  const names = putRow(sheet, top + 1, 1, made.names);
  const amountLabel = put(sheet, top + 2, 0, "Probe (g)");
  const amounts = putRow(sheet, top + 2, 1, made.grams);
  put(sheet, top + 1, 0, "Zutat");
  put(sheet, top + 1, SUM, "Summe");
  put(sheet, top + 3, 0, "Wanne (kg)");
  const tub = amounts.map((spot) =>
    put(sheet, top + 3, spot.column, shown(`=${a1(spot)}*${fixed(factor)}/1000`, "0.00")),
  );
  const total = sumOf(kit, sheet, { row: top + 2, column: SUM }, amounts);
  sumOf(kit, sheet, { row: top + 3, column: SUM }, tub, "0.00");
  const cells = { names, amounts, alsoAmounts: tub, unit: "g", amountLabel, total } as const;
  const recipe = markRecipe(kit, made, cells);
  const said = [...SAID, ...ofAlcohol(made, "reiner Alkohol (g)")];
  strip(sheet, recipe, { row: top + 5, column: 1 }, said);
  nameTarget(sheet, recipe, { row: top + 7, column: 1, label: "wird zu" });
  tellIn(sheet, recipe, { row: top + 7, column: 4 }, UNSERE);
}

/** Slips below each other, what the machine did at the end. */
function laufzettel(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Laufzettel");
  put(sheet, 0, 0, "Laufzettel der Woche, erst Probe, dann Wanne");
  const label = put(sheet, 2, 0, "Wanne = Probe mal");
  const factor = put(sheet, 2, 1, kit.random.pick([8, 12, 15]));
  const own = { Zucker: "Haushaltszucker", Wasser: "Trinkwasser", Vollmilch: "Milch 3,5 %" };
  const mades = kit.make(4).map((made) => called(perKilogram(made), own));
  mades.forEach((made, index) => slip(kit, sheet, made, label.row + 2 + STEP * index, factor));
  const row = 4 + STEP * mades.length;
  log(
    kit,
    sheet,
    { row, column: 0 },
    {
      ...{
        heads: ["Maschine 2", "Auswurf (°C)"],
        when: ["Zettel 1", "Zettel 2", "Zettel 3", "Zettel 4"],
      },
      ranges: [[-8, -6]],
    },
  );
  putRow(sheet, row, 4, ["Dienst", "Vormittag", "Nachmittag"]);
  ["Mo", "Di", "Mi"].forEach((day, at) =>
    putRow(sheet, row + 1 + at, 4, [
      day,
      ["Ute", "Kemal", "Ute"][at],
      ["Kemal", "frei", "Rosa"][at],
    ]),
  );
  note(kit, sheet, row + 6, 0, "Zettel nach dem Spülen wieder an die Leiste hängen");
}

/** Somebody whose lists run across. */
export const laufzettelBlaetter: readonly Layout[] = [
  { name: "Laufzettel mit Zutaten quer, Probe und Wanne", language: "de", build: laufzettel },
];
