import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import type { Problem, Said } from "../layouts/parts";
import { reading } from "../scholars/words";
import { about, mix, samples, solutes, toleranceOf } from "../benches/words";

const VOICE: Voice = {
  lead: "Allergene:",
  honey: "Honig, nichts für Kinder unter 12 Monaten.",
  alcohol: "Alkohol! Nur für Volljährige, nicht für Schwangere und Fahrer.",
  nuts: "Ganze Nüsse, Erstickungsgefahr unter 5 Jahren.",
  egg: "Rohes Eigelb, auf 71 °C erhitzen oder pasteurisiertes verwenden.",
};

/** What each group wrote down, a line each. */
function data(kit: Kit, list: readonly Problem[]): Spot[][] {
  const sheet = addSheet(kit.marked.book, "Rohdaten");
  put(sheet, 0, 0, "Q1 Leistungskurs: Rohdaten aller Gruppen");
  const heads = putRow(sheet, 2, 0, [
    ...["Gr.", "gelöster Stoff", "Einwaage [g]", "dest. Wasser [g]", "M [g/mol]", "z"],
    ...["T Erstarren, gemessen [°C]"],
  ]);
  const rows = list.map((each, index) => {
    const { solute, grams, waterGrams } = each;
    return putRow(sheet, 3 + index, 0, [
      ...[index + 1, solute.de, grams, waterGrams, shown(solute.molarMass, "0.00")],
      ...[solute.particles, shown(reading(each), "0.0")],
    ]);
  });
  const measured = { spots: columnOf(rows, 6), heading: heads[6]!, total: null };
  kit.marked.numberColumns.push({ ...measured, kind: "temperature" });
  const end = 4 + list.length;
  note(kit, sheet, end, 0, "z: Zahl der Teilchen je Formeleinheit");
  note(kit, sheet, end + 1, 0, "Gr. 2 hat den Rührer vergessen und wiederholt.");
  return rows;
}

const HEADS = [
  "Gr.",
  "n [mol]",
  "b [mol/kg]",
  "ΔT [K]",
  "T berechnet [°C]",
  "Messung − Rechnung [K]",
];

/** One group's results, from its raw data on the other sheet. */
function result(sheet: CorpusSheet, cells: readonly Spot[], row: number, constant: Spot): Spot[] {
  const [, , mass, water, molar, particles, measured] = cells.map((spot) => `Rohdaten!${a1(spot)}`);
  const formula = (column: number, content: string, format: string): Spot =>
    put(sheet, row, column, shown(`=${content}`, format));
  const moles = formula(1, `${mass}/${molar}`, "0.0000");
  const molality = formula(2, `${a1(moles)}/(${water}/1000)`, "0.000");
  const depression = formula(3, `${particles}*${fixed(constant)}*${a1(molality)}`, "0.00");
  const point = formula(4, `-${a1(depression)}`, "0.00");
  return [moles, molality, depression, point, formula(5, `${measured}-${a1(point)}`, "0.00")];
}

/** Raw data on one sheet, what follows from them on the next. */
function evaluation(kit: Kit): void {
  const { marked } = kit;
  const six = ["sodium chloride", "sucrose", "fructose", "potassium chloride", "sucrose"];
  const list = samples(kit, solutes(...six, "sodium bicarbonate"), [100, 150, 250]);
  const raw = data(kit, list);
  const sheet = addSheet(marked.book, "Auswertung");
  const [label, constant] = putRow(sheet, 0, 0, ["E_G von Wasser [K·kg/mol]", shown(1.86, "0.00")]);
  marked.inputs.push({ label: label!, value: constant!, bare: "E_G von Wasser" });
  const heads = putRow(sheet, 2, 0, HEADS);
  const proviso = put(
    sheet,
    4 + list.length,
    0,
    `Gesetz für ideale Lösungen; Fehler hier bis ${toleranceOf(kit, list)} K zulässig.`,
  );
  const rows = raw.map((cells, index) => {
    put(sheet, 3 + index, 0, index + 1);
    const answers = result(sheet, cells, 3 + index, constant!);
    const [, name, mass, water, molar, particles] = cells as [Spot, Spot, Spot, Spot, Spot, Spot];
    const [moles, , depression, freezingPoint] = answers as [Spot, Spot, Spot, Spot];
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [moles], water, constant: constant!, depression, freezingPoint, proviso },
    });
    return answers;
  });
  [0, 1, 2, 3, 4].forEach((at) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[1 + at]! },
      fixed: at === 2 ? [constant!] : [],
    }),
  );
}

const SAID: readonly Said[] = [
  { label: "Gefrierbeginn [°C]", states: "freezing point", as: "formula" },
  { label: "ΔT gegen reines Wasser [K]", states: "depression", as: "typed" },
  { label: "Wasser im Ansatz [g]", states: "water", as: "typed", decimals: 0 },
  { label: "gelöste Stoffe im Ansatz [g]", states: "dissolved", as: "formula", format: "0" },
  {
    ...{ label: "ausgefrorenes Wasser bei −20 °C [%]", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -20 },
  },
];

/** What the course freezes in the school kitchen on the last day. */
function lastDay(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kurseis");
  const made = called(kit.make(1)[0]!, { Zucker: "Haushaltszucker" });
  put(sheet, 0, 0, `Kurseis am letzten Tag: ${made.title}`);
  const { recipe, end } = mix(kit, sheet, made, {
    ...{ row: 2, column: 0, heads: ["Nr.", "Zutat", "Masse [g]", "bringt mit"], total: "Ansatz" },
    ...{ name: 1, amount: 2 },
    cells: (item, grams, index) => [index + 1, item, grams, `Gr. ${1 + (index % 6)}`],
  });
  about(sheet, recipe, { row: 2, column: 5 }, { said: SAID, target: "soll sein", voice: VOICE });
  note(kit, sheet, end + 1, 0, "Schüsseln aus der Küche nehmen, nicht aus der Sammlung!");
}

/** A German sixth-form course. */
export const auswertungen: readonly Layout[] = [
  {
    ...{ name: "Leistungskurs Q1, Rohdaten und Auswertung", language: "de" },
    build: (kit) => {
      evaluation(kit);
      lastDay(kit);
    },
  },
];
