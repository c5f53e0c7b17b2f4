import { addSheet, put, shown, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { down } from "../lodgers/words";
import { itemsOf } from "../strollers/words";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Enthält:",
  honey: "Mit Honig, für Kinder unter 12 Monaten nicht geeignet.",
  alcohol: "Mit Alkohol, nicht für Kinder, Schwangere und Fahrer.",
  nuts: "Mit ganzen Nüssen, Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Mit rohem Eigelb, auf 71 °C erhitzen oder pasteurisiertes verwenden.",
};

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt in °C", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Wasser in 100 g (g)", { states: "water", as: "typed", decimals: 1 }],
  ["Zucker je 100 g Wasser (g)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    "Gefrorenes Wasser bei −18 °C (% des Wassers)",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

const TOP = 3;

/** Kinds across in per cent, as a file with decimal commas. */
function landfrauen(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Sorten");
  put(sheet, 0, 0, "Landfrauen, Eis für den Bauernmarkt, Angaben in %");
  const mades = kit.make(4).map((made) => called(largestFirst(made), { Salz: "Speisesalz" }));
  const amountLabel = put(sheet, TOP - 1, 0, "Zutat, Anteil in %");
  const items = down(sheet, [TOP, 0], itemsOf(mades));
  const end = TOP + items.length;
  put(sheet, end, 0, "Summe");
  const row = end + 1;
  const after = row + FACTS.length;
  down(sheet, [after, 0], ["Gedacht als", "Zum Aushängen", "Gemessen im Wagen (°C)"]);
  const readings = mades.map((made, index): Spot => {
    const column = 1 + index;
    const heading = put(sheet, TOP - 1, column, made.title);
    const plan = { items, left: 1, unit: "%", format: "0.0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    const { amounts: spots, total } = recipe;
    marked.numberColumns.push({ spots, heading, total, kind: "per cent" });
    factsDown(sheet, recipe, FACTS, { row, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: after, column });
    tellIn(sheet, recipe, { row: after + 1, column }, VOICE);
    return put(sheet, after + 2, column, shown(-random.whole(28, 38) / 2, "0.0"));
  });
  const heading = { sheet: sheet.name, row: after + 2, column: 0 };
  marked.numberColumns.push({ spots: readings, heading, total: null, kind: "temperature" });
  note(kit, sheet, after + 4, 0, "Stand nach der Sitzung im Mai");
}

/** Countrywomen at a market. */
export const landfrauenSheets: readonly Layout[] = [
  {
    name: "Landfrauen, Sorten in Spalten als Datei",
    language: "de",
    isCsv: true,
    build: landfrauen,
  },
];
