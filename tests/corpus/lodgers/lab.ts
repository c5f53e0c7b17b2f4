import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, problems, type Problem } from "../layouts/parts";

const HEADS = [
  ...["Tube", "Solvent: water (g)", "Solute", "i", "M (g/mol)", "Mass of solute (g)"],
  ...["Molality b (mol/kg)", "Kf × b × i = ΔTf (K)", "Tf worked out (°C)"],
  ...["Tf read, 1st (°C)", "Tf read, 2nd (°C)", "Mean of both (°C)", "Off by (K)"],
];

/** What two students read off the thermometer. */
function readings({ random }: Kit, { solute, waterGrams, grams }: Problem): number[] {
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const again = Math.round(10 * real + random.whole(-1, 1)) / 10;
  return [real, Math.min(-0.1, again)];
}

/** One tube along its row. */
function tube(kit: Kit, sheet: CorpusSheet, row: number, problem: Problem, kf: Spot): Spot[] {
  const { solute, waterGrams, grams } = problem;
  const known = [solute.particles, shown(solute.molarMass, "0.00"), grams];
  const given = putRow(sheet, row, 0, [row - 5, waterGrams, solute.en, ...known]);
  const [, water, , particles, molar, mass] = given.map(a1) as [string, ...string[]];
  const next = (content: string, format: string): Spot =>
    put(sheet, row, sheet.cells[row]!.length, shown(content, format));
  const molality = next(`=(${mass}/${molar})/(${water}/1000)`, "0.000");
  const drop = next(`=${fixed(kf)}*${a1(molality)}*${particles}`, "0.00");
  const point = next(`=0-${a1(drop)}`, "0.00");
  const read = putRow(
    sheet,
    row,
    9,
    readings(kit, problem).map((each) => shown(each, "0.0")),
  );
  const mean = next(`=AVERAGE(${a1(read[0]!)}:${a1(read[1]!)})`, "0.00");
  const off = next(`=ABS(${a1(mean)}-${a1(point)})`, "0.00");
  return [...given, molality, drop, point, ...read, mean, off];
}

/** Marks a tube's cells. */
function markTube({ marked }: Kit, cells: readonly Spot[], constant: Spot, proviso: Spot): void {
  const [, water, name, particles, molar, mass, molality, depression, freezingPoint] = cells;
  marked.solutions.push({
    ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
    ...{ moles: [molality!], water: water!, constant, proviso },
    ...{ depression: depression!, freezingPoint: freezingPoint! },
  });
}

/** Marks what was worked out and what was read, each under its heading. */
function markColumns(
  { marked }: Kit,
  rows: readonly (readonly Spot[])[],
  [heads, constant]: readonly [heads: readonly Spot[], constant: Spot],
): void {
  for (const at of [6, 7, 8, 11, 12]) {
    const held = at === 7 ? [constant] : [];
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[at]!, fixed: held },
    });
  }
  for (const at of [9, 10]) {
    const spots = columnOf(rows, at);
    marked.numberColumns.push({ spots, heading: heads[at]!, total: null, kind: "temperature" });
  }
}

/** Tubes in an ice and salt bath: worked out by hand, then read. */
function lab(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Lab 2");
  put(sheet, 0, 0, "Lab 2: how far do sugar and salts lower the freezing point?");
  put(sheet, 1, 0, "ΔTf = Kf × b × i, with b in mol of solute per kg of water");
  const [, constant] = putRow(sheet, 2, 0, [...["Kf of water", shown(1.86, "0.00"), "K·kg/mol"]]);
  const { list, tolerance } = problems(kit, 5);
  const words = `Ideal dilute solutions; accept anything within ${tolerance} K.`;
  const proviso = put(sheet, 3, 0, words);
  const heads = putRow(sheet, 5, 0, HEADS);
  const rows = list.map((problem, index) => tube(kit, sheet, 6 + index, problem, constant!));
  rows.forEach((cells) => markTube(kit, cells, constant!, proviso));
  markColumns(kit, rows, [heads, constant!]);
  const told = [
    "Read to 0.1 once the temperature stands still; rinse the probe between.",
    "Questions: which tube is furthest off, and is it the salt or the sugar?",
  ];
  told.forEach((text, index) => note(kit, sheet, 13 + index, 0, text));
}

/** A lecturer's lab sheet. */
export const labSheets: readonly Layout[] = [
  { name: "pastry lecturer, lab 2 in tubes", language: "en", build: lab },
];
