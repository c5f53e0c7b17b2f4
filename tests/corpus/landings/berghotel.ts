import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { downward, kiloPrice, readings } from "./words";

const VOICE: Voice = {
  lead: "Für die Karte, enthält:",
  honey: "Honig, nicht für Kinder im ersten Lebensjahr (unter 12 Monaten).",
  alcohol: "Alkohol, nicht für Kinder, Schwangere und wer noch ins Tal fährt.",
  nuts: "Ganze Nüsse, Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Rohes Eigelb, zur Rose auf 71 °C abziehen oder pasteurisiert verwenden.",
};

const facts = (temperature: Spot, temperatureC: number): readonly Said[] => [
  { label: "gefriert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Gefrierpunktserniedrigung (K)", states: "depression", as: "formula" },
  { label: "Zuckeranteil", states: "sugar share", as: "formula", percent: "format" },
  {
    ...{ label: "vom Wasser ausgefroren bei Ausgabe", states: "ice of water", as: "formula" },
    ...{ percent: "format", temperature, temperatureC },
  },
];

const AT = 9;

/** An ice with its shares, grams and costs; below, what is said of it. */
function ice(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, plate: Plate): number {
  const { batch, temperature, temperatureC } = plate;
  put(sheet, row, 0, made.title);
  const heads = putRow(sheet, row, 1, ["Anteil", "Gramm", "€/kg", "€"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, row + 1 + index, 0, [
      ...[name, shown(inUnit(made.grams[index]!, "fraction"), "0.0%"), undefined],
      shown(kiloPrice(kit, made.lines[index]!.en), "0.00"),
    ]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const grams = beside(kit, heads[1]!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}`,
  });
  const costs = beside(kit, heads[3]!, grams, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}/1000`,
  });
  const end = row + 1 + rows.length;
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0%");
  sumOf(kit, sheet, { row: end, column: 2 }, grams, "0");
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const cells = { names, amounts, alsoAmounts: grams, total, amountLabel: heads[0]! } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "fraction" });
  putRow(sheet, end + 1, 0, ["Portion (€)", shown(`=${a1(cost)}/${fixed(plate.guests)}`, "0.00")]);
  const said = say(sheet, recipe, { row: end + 2, column: 0 }, facts(temperature, temperatureC));
  nameTarget(sheet, recipe, { row: said, column: 0, label: "gedacht als" });
  return tellIn(sheet, recipe, { row: said + 1, column: 0 }, VOICE) + 1;
}

interface Plate {
  readonly batch: Spot;
  readonly guests: Spot;
  readonly temperature: Spot;
  readonly temperatureC: number;
}

/** Guests, quenelle and temperature, for all ices of the menu. */
function plateOf(kit: Kit, sheet: CorpusSheet): Plate {
  const { random } = kit;
  const guests = putRow(sheet, 2, 0, ["Halbpension, Gäste", random.pick([40, 56, 72])])[1]!;
  const scoop = input(
    kit,
    sheet,
    { row: 3, column: 0 },
    {
      ...{ label: "Nocke (g)", bare: "Nocke", value: random.pick([45, 50, 60]) },
    },
  );
  const product = shown(`=${a1(guests)}*${a1(scoop)}`, "0");
  const batch = putRow(sheet, 4, 0, ["Ansatz je Eis (g)", product])[1]!;
  const temperatureC = random.pick([-10, -11, -12]);
  const temperature = input(
    kit,
    sheet,
    { row: 5, column: 0 },
    {
      ...{ label: "Ausgabe bei (°C)", bare: "Ausgabe bei", value: temperatureC },
    },
  );
  return { batch, guests, temperature, temperatureC };
}

/** The ices of a menu under each other, at the right who is on duty and the blast freezer. */
function berghotel(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis Halbpension");
  put(sheet, 0, 0, "Patisserie, Eis zum Menü am Samstag");
  const plate = plateOf(kit, sheet);
  const words = { Zucker: "Kristallzucker", "Sahne 35 %": "Schlagobers 36 %" };
  const mades = kit.make(2).map((made) => called(largestFirst(made), words));
  const end = mades.reduce((row, made) => ice(kit, sheet, made, row, plate), 7);
  putRow(sheet, 2, AT - 3, ["Dienst", "Posten"]);
  downward(sheet, { row: 3, column: AT - 3 }, ["Di", "Mi", "Do", "Fr"]);
  downward(sheet, { row: 3, column: AT - 2 }, ["Resi", "Resi", "Koni", "beide"]);
  const freezer = { heading: "Schockfroster früh (°C)", count: 4, from: -36, to: -30 };
  readings(kit, sheet, { row: 2, column: AT }, freezer);
  note(kit, sheet, end, 0, "Nocken am Nachmittag abdrehen, Folie drauf.");
}

/** The pastry kitchen of a hotel in the mountains. */
export const berghotels: readonly Layout[] = [
  { name: "Berghotel, Anteile und Portionen der Halbpension", language: "de", build: berghotel },
];
