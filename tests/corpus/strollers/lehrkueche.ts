import { a1, addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { temperatures } from "./words";

const HEADS = [
  ...["Glas", "Wasser (g)", "Stoff", "Einwaage (g)", "M (g/mol)", "Teilchenzahl"],
  ...["b (mol/kg)", "Erniedrigung (K)", "T gerechnet (°C)", "T abgelesen (°C)", "Unterschied (K)"],
];

/** A glass along its row, worked out and measured; gives its cells. */
function glass(kit: Kit, row: number, problem: Problem, constant: Spot): readonly Spot[] {
  const { solute, grams, waterGrams } = problem;
  const sheet = kit.marked.book.sheets[0]!;
  const given = putRow(sheet, row, 0, [
    ...["ABCD"[row - 3], waterGrams, solute.de, grams],
    ...[shown(solute.molarMass, "0.00"), solute.particles],
  ]);
  const [, water, , mass, molar, count] = given.map(a1);
  const worked = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(formula, format));
  const molality = worked(6, `=1000*${mass}/(${molar}*${water})`, "0.000");
  const law = `=${count}*${fixed(constant)}*${a1(molality)}`;
  const depression = worked(7, law, "0.00");
  const point = worked(8, `=-${a1(depression)}`, "0.00");
  const read = freezesAt(["water", solute.en], [waterGrams, grams]);
  const measured = put(sheet, row, 9, shown(read, "0.0"));
  const gap = worked(10, `=${a1(measured)}-${a1(point)}`, "0.00");
  return [...given, molality, depression, point, measured, gap];
}

type Rows = readonly (readonly Spot[])[];

function markGlasses({ marked }: Kit, rows: Rows, constant: Spot, proviso: Spot): void {
  for (const cells of rows) {
    const [, water, name, mass, molar, particles, molality, depression, point] = cells;
    marked.solutions.push({
      ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
      ...{ moles: [molality!], water: water!, constant, depression: depression! },
      ...{ freezingPoint: point!, proviso },
    });
  }
}

/** Glasses of a vocational class: the law, the thermometer, and what lies between. */
function lehrkueche(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Versuch Gläser");
  put(sheet, 0, 0, "Lehrküche, zweites Jahr: Warum friert Sirup später?");
  const heads = putRow(sheet, 2, 0, HEADS);
  const { list, tolerance } = problems(kit, 4);
  const [, , constant] = putRow(sheet, 8, 0, [
    ...["Kf Wasser", "K·kg/mol", shown(1.86, "0.00")],
  ]) as [Spot, Spot, Spot];
  const rows = list.map((problem, index) => glass(kit, 3 + index, problem, constant));
  const text = `Gesetz für ideale Lösungen, hier auf ${tolerance} K genau.`;
  const proviso = put(sheet, 10, 0, text);
  markGlasses(kit, rows, constant, proviso);
  [6, 7, 8, 10].forEach((column) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, column), heading: heads[column]! },
      fixed: column === 7 ? [constant] : [],
    }),
  );
  temperatures(kit, heads[9]!, columnOf(rows, 9));
  note(kit, sheet, 11, 0, "Ablesen, sobald die ersten Kristalle bleiben.");
}

/** A vocational school for cooks. */
export const lehrkuechen: readonly Layout[] = [
  { name: "Lehrküche, gerechnet neben abgelesen", language: "de", build: lehrkueche },
];
