import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, perKilogram } from "../kitchens/hand";
import { say, type Problem } from "../layouts/parts";
import { inUnit } from "../list";
import { makeRecipe, type MadeRecipe } from "../recipes";
import { dissolved } from "../solution";
import { line as of, type StockRecipe } from "../stock";
import { others, problemsOf, usual, weighed } from "./words";

const VOICE: Voice = {
  lead: "Allergene laut Rezeptur:",
  honey: "Honig: für Säuglinge unter 12 Monaten tabu.",
  alcohol: "Alkohol: kein Verzehr durch Kinder, Schwangere, Fahrer.",
  nuts: "Ganze Nüsse: Kinder unter 5 Jahren können ersticken.",
  egg: "Rohes Eigelb: Erhitzung auf 71 °C oder pasteurisiertes Eigelb.",
};

const onSheet = ({ sheet, row, column }: Spot): string =>
  `${sheet}!${fixed({ sheet, row, column })}`;

interface Tables {
  readonly constant: Spot;
  readonly rows: readonly (readonly Spot[])[];
}

/** Alles Nachgeschlagene auf einem Blatt. */
function constants(kit: Kit, list: readonly Problem[]): Tables {
  const sheet = addSheet(kit.marked.book, "Stoffwerte");
  put(sheet, 0, 0, "Stoffwerte zum Protokoll");
  const [, constant] = putRow(sheet, 2, 0, [
    "kryoskopische Konstante Wasser",
    shown(1.86, "0.00"),
    "K·kg/mol",
  ]);
  putRow(sheet, 4, 0, ["Substanz", "M [g/mol]", "i (van 't Hoff)", "Reinheit laut Etikett"]);
  const rows = list.map(({ solute }, index) =>
    putRow(sheet, 5 + index, 0, [
      ...[solute.de, shown(solute.molarMass, "0.00"), solute.particles, "p. a."],
    ]),
  );
  return { constant: constant!, rows };
}

const HEADS = [
  ...["Ansatz", "Substanz", "Einwaage [g]", "Wasser [g]", "n [mol]", "Wasser [kg]", "b [mol/kg]"],
  ...["ΔT [K]", "Gefrierpunkt [°C]"],
];

/** Eine Zeile der Auswertung mit den Werten vom ersten Blatt. */
function line(sheet: CorpusSheet, problem: Problem, index: number, { constant, rows }: Tables) {
  const row = 3 + index;
  const { solute, grams, waterGrams } = problem;
  const [, molar, particles] = rows[index]! as [Spot, Spot, Spot];
  const [, name, mass, water] = putRow(sheet, row, 0, [
    ...[index + 1, solute.de, grams, waterGrams],
  ]) as [Spot, Spot, Spot, Spot];
  const moles = put(sheet, row, 4, shown(`=${a1(mass)}/${calledFrom(mass, molar)}`, "0.0000"));
  const kilograms = put(sheet, row, 5, shown(`=${a1(water)}/1000`, "0.000"));
  const molality = put(sheet, row, 6, shown(`=${a1(moles)}/${a1(kilograms)}`, "0.000"));
  const law = `=${calledFrom(mass, particles)}*${onSheet(constant)}*${a1(molality)}`;
  const depression = put(sheet, row, 7, shown(law, "0.00"));
  const freezingPoint = put(sheet, row, 8, shown(`=-${a1(depression)}`, "0.00"));
  const solution = {
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint },
  };
  return { solution, worked: [moles, kilograms, molality, depression, freezingPoint] };
}

/** Die Auswertung, ein Ansatz je Zeile. */
function evaluation(kit: Kit, list: readonly Problem[], tables: Tables, tolerance: string): void {
  const sheet = addSheet(kit.marked.book, "Auswertung");
  put(sheet, 0, 0, "Auswertung (M, i und Kf stehen auf dem Blatt Stoffwerte)");
  const heads = putRow(sheet, 2, 0, HEADS);
  const lines = list.map((problem, index) => line(sheet, problem, index, tables));
  const text = `Fehler durch die ideale Näherung: höchstens ${tolerance} K.`;
  const proviso = put(sheet, 4 + list.length, 0, text);
  lines.forEach(({ solution }, index) => {
    if (!dissolved.includes(list[index]!.solute)) return;
    kit.marked.solutions.push({ ...solution, proviso });
  });
  const rows = lines.map(({ worked }) => worked);
  [0, 1, 2, 3, 4].forEach((at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[4 + at]! },
      fixed: at === 3 ? [tables.constant] : [],
    }),
  );
  note(
    kit,
    sheet,
    6 + list.length,
    0,
    "Diskussion: Warum weicht das Magnesiumsalz stärker ab als der Zucker?",
  );
}

const MILK = { allergen: { en: "milk", de: "Milch" } };

/** Ein Milcheis mit Schmelzsalz, das die zweite Gruppe einfror. */
const CITRATE: StockRecipe = {
  ...{ en: "Milk ice with citrate", de: "Milcheis mit Citrat" },
  lines: [
    ...[of("whole milk", "Vollmilch", 620, MILK), of("cream 35 % fat", "Sahne 35 %", 180, MILK)],
    ...[of("sugar", "Zucker", 130), of("dextrose monohydrate", "Dextrose-Monohydrat", 40)],
    of("sodium citrate dihydrate", "Natriumcitrat-Dihydrat", 3),
  ],
};

/** Das Eis aus dem Technikum, das zum Protokoll gehört. */
function technikum(kit: Kit, made: MadeRecipe, index: number): void {
  const sheet = addSheet(kit.marked.book, `Eismix ${index + 1}`);
  putRow(sheet, 0, 0, ["Rezeptur", made.title]);
  putRow(sheet, 1, 0, ["Gruppe", "AB"[index]]);
  const { recipe, end } = weighed(
    kit,
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Pos.", "Rohstoff", "Soll", "Einheit"],
      cells: (name, grams, index) => [index + 1, name, shown(inUnit(grams, "kg"), "0.000"), "kg"],
      ...{ name: 1, amount: 2, unit: "kg", units: 3, total: "Mix gesamt", format: "0.000" },
    },
  );
  put(sheet, end, 3, "kg");
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, [
    { label: "Gefrierpunktserniedrigung", inCell: "K", states: "depression", as: "formula" },
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed" },
    { label: "Wasser, gesamt", inCell: "g", states: "water", as: "typed", decimals: 0 },
    {
      ...{ label: "Eisanteil am Mix bei −12 °C", inCell: "%", states: "ice of mix" },
      ...{ as: "typed", temperatureC: -12 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Zieltextur" });
  tellIn(sheet, recipe, { row: next + 2, column: 1 }, VOICE);
}

/** Protokoll einer Studentin: Stoffwerte, Auswertung, Eismix. */
function protokoll(kit: Kit): void {
  const names = ["sucrose", "glucose monohydrate", "sodium chloride", "potassium chloride"];
  const solutes = [...names.map(usual), others.magnesium];
  const { list, tolerance } = problemsOf(kit, solutes, [100, 250, 500]);
  evaluation(kit, list, constants(kit, list), tolerance);
  const citrate = makeRecipe(kit.random, "de", CITRATE);
  [...kit.make(1), citrate].forEach((made, at) => technikum(kit, perKilogram(made), at));
}

/** Ein Protokoll aus dem Studium. */
export const protokolle: readonly Layout[] = [
  {
    name: "Protokoll Lebensmitteltechnologie, Stoffwerte auf eigenem Blatt",
    language: "de",
    build: protokoll,
  },
];
