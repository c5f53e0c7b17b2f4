import { a1, addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { freezesAt } from "../layouts/parts";
import { input } from "../page";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { columnOf } from "../kitchens/hand";

interface Given {
  readonly water: Spot;
  readonly constant: Spot;
  readonly waterGrams: number;
}

const STEPS = [
  ...["Becher", "Stoff", "Einwaage m in g", "M in g/mol", "n = m/M in mol", "b in mol/kg", "i"],
  ...["ΔT = i · Kf · b in K", "Gefrierpunkt in °C", "gemessen in °C"],
];

/** One beaker in its row, step by step, and what the thermometer said. */
function beaker(kit: Kit, row: number, solute: Dissolved, grams: number, given: Given): Spot[] {
  const sheet = kit.marked.book.sheets[0]!;
  const { water, constant, waterGrams } = given;
  const [, , mass, molar] = putRow(sheet, row, 0, [
    ...[row - 7, solute.de, grams, shown(solute.molarMass, "0.00")],
  ]);
  const n = put(sheet, row, 4, shown(`=${a1(mass!)}/${a1(molar!)}`, "0.0000"));
  const b = put(sheet, row, 5, shown(`=${a1(n)}/(${fixed(water)}/1000)`, "0.000"));
  const particles = put(sheet, row, 6, solute.particles);
  const law = `=${a1(particles)}*${fixed(constant)}*${a1(b)}`;
  const depression = put(sheet, row, 7, shown(law, "0.00"));
  const point = put(sheet, row, 8, shown(`=-${a1(depression)}`, "0.00"));
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const measured = put(sheet, row, 9, shown(real, "0.0"));
  return [{ ...mass!, column: 1 }, mass!, molar!, n, b, particles, depression, point, measured];
}

function markBeakers(kit: Kit, rows: readonly Spot[][], given: Given, proviso: Spot): void {
  const { water, constant } = given;
  for (const cells of rows) {
    const [name, mass, molar, moles, , particles, depression, freezingPoint] = cells as [
      ...[Spot, Spot, Spot, Spot, Spot, Spot, Spot, Spot],
    ];
    kit.marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      // The moles are what counts each solute, not the molality beside them.
      ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
    });
  }
}

/** Marks the columns that are worked out, and the one that was measured. */
function markColumns(
  { marked }: Kit,
  rows: readonly Spot[][],
  heads: readonly Spot[],
  given: Given,
) {
  const fixedIn = [[], [given.water], [given.constant], []];
  [3, 4, 6, 7].forEach((at, index) => {
    const column = { spots: columnOf(rows, at), heading: heads[at + 1]! };
    marked.formulaColumns.push({ ...column, fixed: fixedIn[index]! });
  });
  const measured = { spots: columnOf(rows, 8), heading: heads[9]!, total: null } as const;
  marked.numberColumns.push({ ...measured, kind: "temperature" });
}

/** Beakers with the same water, calculated by hand and then measured. */
function beakers(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Arbeitsblatt 3");
  put(sheet, 0, 0, "Lernfeld Speiseeis, Arbeitsblatt 3: Was senkt den Gefrierpunkt?");
  put(sheet, 1, 0, "Klasse:");
  const waterGrams = random.pick([100, 200, 250]);
  const words = { label: "Wasser in jedem Becher (g)", bare: "Wasser in jedem Becher" };
  const water = input(kit, sheet, { row: 3, column: 0 }, { ...words, value: waterGrams });
  const kf = ["Kf von Wasser (K·kg/mol)", shown(1.86, "0.00")];
  const constant = putRow(sheet, 4, 0, kf)[1]!;
  const given = { water, constant, waterGrams };
  const heads = putRow(sheet, 7, 0, STEPS);
  const solutes = choose(random, 5);
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams));
  const rows = solutes.map((each, index) => beaker(kit, 8 + index, each, grams[index]!, given));
  const gaps = solutes.map((each, index) => idealGap([each], [grams[index]!], waterGrams));
  const gap = tolerated(Math.max(...gaps)).replace(".", ",");
  const text = `Die Formel gilt für verdünnte Lösungen: Abweichung bis ${gap} K ist zulässig.`;
  const proviso = put(sheet, 14, 0, text);
  markBeakers(kit, rows, given, proviso);
  markColumns(kit, rows, heads, given);
  note(kit, sheet, 15, 0, "Aufgabe: Warum wirkt Kochsalz stärker als gleich viel Zucker?");
}

/** Sheets of a vocational school. */
export const schule: readonly Layout[] = [
  { name: "Berufsschule, fünf Becher mit Messwert", language: "de", build: beakers },
];
