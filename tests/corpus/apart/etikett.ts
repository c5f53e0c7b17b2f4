import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import type { Voice } from "../caterers/words";
import { onSheet } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { resultAt, type ResultPlan } from "../results";
import { hundredth, readings, tellBeside } from "./words";

const VOICE: Voice = {
  lead: "Enthält",
  honey: "Enthält Honig: für Säuglinge unter 12 Monaten nicht geeignet.",
  alcohol: "Enthält Alkohol: nicht für Kinder, Schwangere und vor dem Fahren.",
  nuts: "Enthält ganze Nüsse: Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Eigelb roh: in der Herstellung auf 71 °C erhitzen oder pasteurisiert einsetzen.",
};

/** What goes into a hundred grams, the most first, and into a day's batch. */
function composition(kit: Kit, sheet: CorpusSheet): MarkedRecipe {
  const { random, marked } = kit;
  const made = called(largestFirst(kit.make(1)[0]!), {
    ...{ Heidelbeeren: "Blaubeeren", Fruktose: "Fruchtzucker", Wasser: "Trinkwasser" },
    ...{ Vollmilch: "Milch 3,5 %", "Sahne 35 %": "Schlagsahne 35 %", Eigelb: "Eidotter" },
  });
  const [label, batch] = putRow(sheet, 0, 0, ["Tagesmenge [kg]", random.whole(12, 60)]);
  marked.inputs.push({ label: label!, value: batch!, bare: "Tagesmenge" });
  putRow(sheet, 1, 0, ["Erzeugnis", made.title]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Zutat, absteigend", "Gew.-%", "Tagesmenge in kg", "bio"],
      cells: (name, grams) => [name, shown(grams, "0.0"), undefined, "x"],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [batch!] },
    content: (spot) => `=${a1(spot)}/100*${fixed(batch!)}`,
  });
  put(sheet, end + 1, 0, "Kontrollsumme");
  const total = sumOf(kit, sheet, { row: end + 1, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end + 1, column: 2 }, alsoAmounts, "0.00");
  const lines = { names, amounts, alsoAmounts, amountLabel: heads[1]!, total, unit: "%" } as const;
  return markRecipe(kit, made, lines);
}

const FACTS: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpunkt [°C]", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Gefrierpunktserniedrigung [K]", { states: "depression", as: "typed" }],
  ["Wasser [g/100 g]", { states: "water", as: "formula", format: "0.0" }],
  ["Gelöste Trockenmasse [g/100 g]", { states: "dissolved", as: "typed", decimals: 1 }],
  [
    "Gefrorener Wasseranteil bei −18 °C [%]",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 1 },
  ],
  [
    "Eis im Erzeugnis bei −12 °C [%]",
    { states: "ice of mix", as: "typed", temperatureC: -12, decimals: 1 },
  ],
];

/** What is printed, and what stands in the file on the product. */
function label(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe): void {
  const { random } = kit;
  const lines = onSheet("Zusammensetzung", span);
  put(sheet, 0, 0, "Produktdatenblatt und Etikett");
  let row = 2;
  for (const [words, plan] of FACTS) {
    const at = { sheet: sheet.name, row, column: 0 };
    if (resultAt(sheet, recipe, at, { row, column: 1 }, plan, lines)) put(sheet, row++, 0, words);
  }
  nameTarget(sheet, recipe, { row: row++, column: 0, label: "Textur" });
  const next = tellBeside(sheet, recipe, { row: row + 1, column: 0 }, VOICE);
  putRow(sheet, next + 1, 0, ["Füllmenge [g]", random.pick([90, 350, 400])]);
  putRow(sheet, next + 2, 0, ["Lagern bei höchstens [°C]", -18]);
  putRow(sheet, next + 3, 0, ["Mindesthaltbar [Monate]", random.pick([9, 12])]);
  readings(
    kit,
    sheet,
    { row: 2, column: 3 },
    {
      heads: ["Palette", "Kern [°C]", "geprüft"],
      ...{ when: ["1", "2", "3", "4", "5"].map((nr) => `Nr. ${nr}`), tenths: [-236, -191] },
      rest: () => [random.pick(["MK", "LS"])],
    },
  );
  hundredth(
    kit,
    sheet,
    { row: 10, column: 3 },
    {
      heads: ["Absatzweg", "Anteil [%]"],
      ...{ items: ["Hofladen", "Biokiste", "Naturkost", "Kantinen"], total: "Summe" },
    },
  );
  note(kit, sheet, next + 5, 0, "Kontrollstelle kommt im Oktober, Rückstellmuster bereithalten.");
}

const PREPARED = [
  ["Holunderansatz", 30, 40],
  ["Apfeldicksaft, eigener", 60, 70],
  ["Schlehenmark", 5, 9],
] as const;

/** What the farm boils down itself, and a trial with it. */
function prepared(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Eigene Zubereitungen, Gramm in 100 g");
  const heads = putRow(sheet, 1, 0, ["Name", "Zucker", "Wasser", "inert", "Allergene"]);
  const rows = PREPARED.map(([name, from, to], index) => {
    const [sugar, rest] = [random.whole(from, to), random.whole(0, 3)];
    return putRow(sheet, 2 + index, 0, [name, sugar, 100 - sugar - rest, rest, "keine"]);
  });
  for (const [name, sugars, water, , allergens] of rows) {
    marked.ownLines.push({ name: name!, water: water!, sugars: sugars!, allergens: allergens! });
  }
  putRow(sheet, 6, 0, ["Versuch Nr. 8", "g"]);
  const grams = [random.whole(90, 140), random.whole(60, 90), random.whole(150, 220)];
  const own = PREPARED.map(([name], index): [string, number] => [name, grams[index]!]);
  const list = [...own, ["Trinkwasser", 200] as const].map((each, index) =>
    putRow(sheet, 7 + index, 0, each),
  );
  const [items, amounts] = [columnOf(list, 0), columnOf(list, 1)] as [Spot[], Spot[]];
  put(sheet, 11, 0, "Ansatz");
  sumOf(kit, sheet, { row: 11, column: 1 }, amounts);
  const block = absolute(span([heads[0]!, ...rows.flat()]));
  const call = `=RIME.FREEZINGPOINT(${span(items)},${span(amounts)},${block})`;
  putRow(sheet, 12, 0, ["Gefrierpunkt [°C]", shown(call, "0.0")]);
}

function etikett(kit: Kit): void {
  const recipe = composition(kit, addSheet(kit.marked.book, "Zusammensetzung"));
  label(kit, addSheet(kit.marked.book, "Datenblatt"), recipe);
  prepared(kit, addSheet(kit.marked.book, "Zubereitungen"));
}

/** An organic farm's product file. */
export const etiketten: readonly Layout[] = [
  { name: "Biohof, Produktdatenblatt hinter der Zusammensetzung", language: "de", build: etikett },
];
