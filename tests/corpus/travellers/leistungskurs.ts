import { a1, addSheet, calledFrom, fixed, put, putRow, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { problems, type Problem } from "../layouts/parts";
import { trueValue, type MarkedSolution } from "../marks";
import { pair } from "./words";

/** What is known of each substance, on a sheet of its own. */
function substances({ marked }: Kit, list: readonly Problem[]): Spot[][] {
  const sheet = addSheet(marked.book, "Stoffdaten");
  putRow(sheet, 0, 0, ["Stoff", "Teilchen je Formeleinheit", "Molare Masse (g/mol)"]);
  return list.map(({ solute }, index) =>
    putRow(sheet, 1 + index, 0, [
      ...[solute.de, solute.particles, shown(solute.molarMass, "0.00")],
    ]),
  );
}

const HEADS = [
  ...["Gruppe", "Stoff", "Einwaage (g)", "Wasser (g)", "Stoffmenge (mol)", "Teilchen (mol)"],
  ...["Molalität der Teilchen (mol/kg)", "ΔT (K)", "Gefrierpunkt, berechnet (°C)"],
  "Gefrierpunkt, abgelesen (°C)",
];

/** What the group would read at the thermometer. */
function reading(kit: Kit, { solute, grams, waterGrams }: Problem): number {
  const made = { names: ["water", solute.en], grams: [waterGrams, grams] };
  const real = trueValue(made, "freezing point", null)!;
  return Number((real + kit.random.between(-0.1, 0.1)).toFixed(1));
}

/** One group's row, worked out with the data of its substance. */
function group(kit: Kit, row: number, problem: Problem, data: readonly Spot[], kf: Spot): Spot[] {
  const sheet = kit.marked.book.sheets.find(({ name }) => name === "Auswertung")!;
  const home = { sheet: sheet.name, row, column: 0 };
  const [name, particles, molar] = data.map((spot) => calledFrom(home, spot));
  const given = [`Gruppe ${row - 4}`, `=${name}`, problem.grams, problem.waterGrams];
  const [, , mass, water] = putRow(sheet, row, 0, given) as [Spot, Spot, Spot, Spot];
  const at = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(formula, format));
  const counted = at(4, `=${a1(mass)}/${molar}`, "0.0000");
  const moles = at(5, `=${a1(counted)}*${particles}`, "0.0000");
  const molality = at(6, `=${a1(moles)}/(${a1(water)}/1000)`, "0.000");
  const depression = at(7, `=${a1(molality)}*${fixed(kf)}`, "0.00");
  const point = at(8, `=0-${a1(depression)}`, "0.00");
  const read = put(sheet, row, 9, shown(reading(kit, problem), "0.0"));
  return [mass, water, counted, moles, molality, depression, point, read];
}

type Shared = Pick<MarkedSolution, "constant" | "proviso">;

/** Marks the columns of the groups, and each group's solution. */
function markGroups(
  { marked }: Kit,
  rows: readonly (readonly Spot[])[],
  heads: readonly Spot[],
  data: readonly (readonly Spot[])[],
  shared: Shared,
): void {
  rows.forEach((cells, index) => {
    const [mass, water, counted, moles, , depression, freezingPoint] = cells;
    const [name, particles, molar] = data[index]!;
    marked.solutions.push({
      ...{ names: [name!], particles: [particles!], molarMasses: [molar!], grams: [mass!] },
      ...{ counted: [counted!], moles: [moles!], water: water!, depression: depression! },
      ...{ freezingPoint: freezingPoint!, ...shared },
    });
  });
  [2, 3, 4, 5, 6].forEach((at) => {
    const fixedCells = at === 5 ? [shared.constant] : [];
    const heading = heads[2 + at]!;
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading, fixed: fixedCells });
  });
  const none = { total: null, kind: "temperature" } as const;
  marked.numberColumns.push({ spots: columnOf(rows, 7), heading: heads[9]!, ...none });
}

/** The groups of a course one below the other. */
function advanced(kit: Kit): void {
  const { list, tolerance } = problems(kit, 5);
  const sheet = addSheet(kit.marked.book, "Auswertung");
  put(sheet, 0, 0, "Physik Q1: Gefrierpunktserniedrigung, Auswertung der Gruppen");
  const constant = pair(sheet, 1, 0, "Kryoskopische Konstante (K·kg/mol)", shown(1.86, "0.00"));
  const words = `Gerechnet wie bei idealen Lösungen. Erlaubte Abweichung: ${tolerance} K.`;
  const proviso = put(sheet, 2, 0, words);
  const data = substances(kit, list);
  const heads = putRow(sheet, 4, 0, HEADS);
  const rows = list.map((each, index) => group(kit, 5 + index, each, data[index]!, constant));
  markGroups(kit, rows, heads, data, { constant, proviso });
  note(kit, sheet, 11, 0, "Abgelesen wird, wenn das Thermometer eine Minute lang steht.");
}

/** Physics for the last years of school. */
export const leistungskurse: readonly Layout[] = [
  { name: "Leistungskurs Physik, Auswertung mit Stoffdaten", language: "de", build: advanced },
];
