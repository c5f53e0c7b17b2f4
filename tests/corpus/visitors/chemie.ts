import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { freezesAt } from "../layouts/parts";
import { input } from "../page";
import { columnOf } from "../kitchens/hand";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { temperatures } from "./lines";
import { sugarAndSalt } from "./zuckerSalz";

const HEADS = [
  ...["Becher", "Gelöst wird", "M in g/mol", "Teilchen i", "Einwaage in g", "n in mol"],
  ...["b in mol/kg", "ΔT in K", "Gefrierpunkt in °C", "gemessen in °C"],
];

const DAYS = ["Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag"];

/** The week's weather before school. */
function weather(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 14, 0, ["Tag", "Luft um 7 Uhr (°C)", "Fahrbahn um 7 Uhr (°C)"]);
  DAYS.forEach((day, index) => put(sheet, 15 + index, 0, day));
  temperatures(kit, sheet, { heading: heads[1]!, count: DAYS.length }, [-9, -1]);
  temperatures(kit, sheet, { heading: heads[2]!, count: DAYS.length }, [-6, -1]);
}

/** The formulas of one beaker in its row. */
function beaker(sheet: CorpusSheet, cells: readonly Spot[], water: Spot, constant: Spot): Spot[] {
  const [, , molar, particles, mass] = cells as [Spot, Spot, Spot, Spot, Spot];
  const { row } = mass;
  const amount = put(sheet, row, 5, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
  const molal = `=${a1(amount)}/(${fixed(water)}/1000)`;
  const molality = put(sheet, row, 6, shown(molal, "0.000"));
  const law = `=${fixed(constant)}*${a1(molality)}*${a1(particles)}`;
  const depression = put(sheet, row, 7, shown(law, "0.00"));
  const point = put(sheet, row, 8, shown(`=-${a1(depression)}`, "0.00"));
  return [amount, molality, depression, point];
}

interface Glass {
  readonly solute: Dissolved;
  readonly grams: number;
}

/** Common salt and four others, each in the same water. */
function glasses({ random }: Kit, waterGrams: number): Glass[] {
  const others = dissolved.filter(({ en }) => en !== "sodium chloride");
  return [dissolved[1]!, ...choose(random, 4, others)].map((solute) => ({
    ...{ solute, grams: gramsOf(random, solute, waterGrams) },
  }));
}

interface Bench {
  readonly water: Spot;
  readonly waterGrams: number;
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** One beaker: what is in it, what it should do, what the class read. */
function beakerRow(kit: Kit, { solute, grams }: Glass, index: number, bench: Bench): Spot[] {
  const { water, waterGrams, constant, proviso } = bench;
  const sheet = kit.marked.book.sheets[0]!;
  const { de, molarMass, particles } = solute;
  const contents = [index + 1, de, shown(molarMass, "0.00"), particles, grams];
  const cells = putRow(sheet, 6 + index, 0, contents);
  const answers = beaker(sheet, cells, water, constant);
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const measured = put(sheet, 6 + index, 9, shown(real, "0.0"));
  const [, name, molar, count, mass] = cells as [Spot, Spot, Spot, Spot, Spot];
  const [amount, , depression, freezingPoint] = answers as [Spot, Spot, Spot, Spot];
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [count] },
    ...{ moles: [amount], water, constant, depression, freezingPoint, proviso },
  });
  return [...answers, measured];
}

/** Marks the columns of the answers. */
function markColumns(
  { marked }: Kit,
  rows: readonly Spot[][],
  heads: readonly Spot[],
  { water, constant }: Bench,
): void {
  [[], [water], [constant], []].forEach((cells, at) =>
    marked.formulaColumns.push({
      spots: columnOf(rows, at),
      heading: heads[5 + at]!,
      fixed: cells,
    }),
  );
  const measured = { spots: columnOf(rows, 4), heading: heads[9]!, total: null };
  marked.numberColumns.push({ ...measured, kind: "temperature" });
}

/** Why roads are salted: the same water in every beaker, the class's readings at the right. */
function roadSalt(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Streusalz");
  put(sheet, 0, 0, "Klasse 9: Warum streut der Winterdienst Salz? Fünf Becher im Vergleich");
  const words = { label: "Wasser in jedem Becher (g)", bare: "Wasser in jedem Becher" };
  const waterGrams = random.pick([100, 200, 250]);
  const water = input(kit, sheet, { row: 2, column: 0 }, { ...words, value: waterGrams });
  const constant = putRow(sheet, 3, 0, ["Kf von Wasser (K·kg/mol)", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 5, 0, HEADS);
  const list = glasses(kit, waterGrams);
  const gaps = list.map(({ solute, grams }) => idealGap([solute], [grams], waterGrams));
  const gap = tolerated(Math.max(...gaps)).replace(".", ",");
  const text = `Gerechnet als ideale Lösung; Abweichung von der Messung höchstens ${gap} K.`;
  const proviso = put(sheet, 12, 0, text);
  const bench = { water, waterGrams, constant, proviso };
  const rows = list.map((each, index) => beakerRow(kit, each, index, bench));
  markColumns(kit, rows, heads, bench);
  weather(kit, sheet);
  note(kit, sheet, 21, 0, "Hausaufgabe: Ab welcher Kälte hilft Streusalz nicht mehr?");
}

/** Sheets of a chemistry teacher. */
export const chemie: readonly Layout[] = [
  { name: "Chemie 9, Streusalz im Becher", language: "de", build: roadSalt },
  { name: "Chemie 10, Zucker neben Salz", language: "de", build: sugarAndSalt },
];
