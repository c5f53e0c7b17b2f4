import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, upTo } from "../strollers/words";
import { declare, readings, table } from "./words";

const HIGH = 8;
const DAYS = ["Montag", "Mittwoch", "Freitag"];

const SAID: readonly Said[] = [
  { label: "Gefrierbeginn in °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "also unter Wasser in K", states: "depression", as: "formula" },
  {
    label: "vom Wasser gefroren bei −18 °C in %",
    states: "ice of water",
    as: "typed",
    temperatureC: -18,
    decimals: 0,
  },
  { label: "gelöst in g", states: "dissolved", as: "typed", decimals: 0 },
];

/** A day's ice, its ingredients side by side with the kilograms below; gives the sum. */
function day(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, at: number): Spot {
  const row = 3 + HIGH * at;
  putRow(sheet, row, 0, [DAYS[at], made.title]);
  put(sheet, row + 1, 0, "Zutat");
  const amountLabel = put(sheet, row + 2, 0, "Menge (kg)");
  const names = putRow(sheet, row + 1, 2, made.names);
  const kilos = made.grams.map((grams) => shown(inUnit(grams, "kg"), "0.000"));
  const amounts = putRow(sheet, row + 2, 2, kilos);
  put(sheet, row + 1, 1, "alles");
  const total = sumOf(kit, sheet, { row: row + 2, column: 1 }, amounts, "0.000");
  const recipe = markRecipe(kit, made, { names, amounts, unit: "kg", amountLabel, total });
  strip(sheet, recipe, { row: row + 3, column: 2 }, SAID);
  nameTarget(sheet, recipe, { row, column: 4, label: "Ausgabe als" });
  declare(sheet, recipe, { row: row + 5, column: 0 }, "Enthält:");
  return total;
}

/** What is handed out for how much, and when. */
function counter(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ausgabe");
  table(sheet, { row: 0, column: 0 }, [
    ["Öffnungszeiten", "von", "bis"],
    ["Unterstufe", "11:50", "12:20"],
    ["Mittelstufe", "12:25", "12:55"],
    ["Lehrkräfte", "13:00", "13:30"],
  ]);
  table(sheet, { row: 6, column: 0 }, [
    ["Portion", "wiegt (g)", "kostet (€)"],
    ["klein", 60, shown(0.8, "0.00")],
    ["groß", 100, shown(1.2, "0.00")],
    ["mit Waffel", 105, shown(1.3, "0.00")],
  ]);
  const heads = putRow(sheet, 11, 0, [
    "Truhe an der Ausgabe",
    "11 Uhr (°C)",
    "14 Uhr (°C)",
    "Kürzel",
  ]);
  DAYS.forEach((each, index) => {
    put(sheet, 12 + index, 0, each);
    put(sheet, 12 + index, 3, ["ke", "wo", "ke"][index]);
  });
  readings(kit, sheet, heads[1]!, DAYS.length, [-21, -18]);
  readings(kit, sheet, heads[2]!, DAYS.length, [-19, -16]);
  note(kit, sheet, 17, 0, "Bei über −14 °C bitte sofort den Hausmeister rufen.");
}

/** Three days below each other, every recipe across. */
function speiseplan(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "KW 24");
  put(sheet, 0, 0, "Schulkantine, Nachtisch KW 24");
  note(kit, sheet, 1, 0, "Angerührt wird am Vortag ab 14 Uhr.");
  const mades = madeOf(kit, 3, (each) => !isAlcoholic(each)).map((made) =>
    called(upTo(made, 6000), { Wasser: "Trinkwasser", Salz: "Speisesalz" }),
  );
  const totals = mades.map((made, at) => day(kit, sheet, made, at));
  const row = 3 + HIGH * DAYS.length;
  put(sheet, row, 0, "Woche zusammen (kg)");
  const sum = shown(`=${totals.map(a1).join("+")}`, "0.000");
  kit.marked.sums.push({ spot: put(sheet, row, 1, sum), parts: totals });
  counter(kit);
}

/** A school's canteen. */
export const speiseplaene: readonly Layout[] = [
  { name: "Schulkantine, Wochenplan mit Rezepten quer", language: "de", build: speiseplan },
];
