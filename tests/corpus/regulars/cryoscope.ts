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
import { note, type Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { problems, type Problem } from "../layouts/parts";
import { trueValue } from "../marks";

const HEADS = [
  ...["Probe", "Gelöst", "Einwaage (g)", "Wasser (g)", "M (g/mol)", "i"],
  ...["1. Messung (°C)", "2. Messung (°C)", "3. Messung (°C)", "Mittelwert (°C)"],
  ...["Molalität (mol/kg)", "ΔT ideal (K)", "Gefrierpunkt ideal (°C)", "Mittelwert − ideal (K)"],
];

/** Formats of the columns with formulas, from the mean on. */
const FORMATS = ["0.00", "0.0000", "0.00", "0.00", "0.00"];

/** What is worked out of a sample's cells, beside them. */
function worked(sheet: CorpusSheet, cells: readonly Spot[], constant: Spot): Spot[] {
  const [, , mass, water, molar, particles] = cells as [Spot, Spot, Spot, Spot, Spot, Spot];
  const at = (column: number) => a1({ ...mass, column });
  const formulas = [
    `=AVERAGE(${span(cells.slice(6))})`,
    `=${a1(mass)}/${a1(molar)}/${a1(water)}*1000`,
    `=${fixed(constant)}*${at(10)}*${a1(particles)}`,
    `=-${at(11)}`,
    `=${at(9)}-${at(12)}`,
  ].map((content, index) => shown(content, FORMATS[index]!));
  return putRow(sheet, mass.row, 9, formulas);
}

/** One sample along its row: what was weighed, what was read three times, what comes out ideally. */
function sample(kit: Kit, sheet: CorpusSheet, row: number, plan: Problem & { constant: Spot }) {
  const { solute, waterGrams, constant } = plan;
  const grams = Number((plan.grams * kit.random.between(0.97, 1)).toFixed(2));
  const made = { names: ["water", solute.en], grams: [waterGrams, grams] };
  const real = trueValue(made, "freezing point", null)!;
  const read = () => shown(Number((real + kit.random.between(-0.02, 0.02)).toFixed(2)), "0.00");
  const cells = putRow(sheet, row, 0, [
    ...[`K${row - 4}`, solute.de, shown(grams, "0.00"), waterGrams],
    ...[shown(solute.molarMass, "0.00"), solute.particles, read(), read(), read()],
  ]);
  return [...cells, ...worked(sheet, cells, constant)];
}

/** Marks the columns with readings and with formulas. */
function markRows(kit: Kit, rows: readonly Spot[][], heads: readonly Spot[], constant: Spot) {
  const { marked } = kit;
  const kind = "temperature" as const;
  [6, 7, 8].forEach((at) => {
    const column = { spots: columnOf(rows, at), heading: heads[at]!, total: null, kind };
    marked.numberColumns.push(column);
  });
  [9, 10, 11, 12, 13].forEach((at) => {
    const column = { spots: columnOf(rows, at), heading: heads[at]! };
    marked.formulaColumns.push({ ...column, fixed: at === 11 ? [constant] : [] });
  });
}

/** Readings of the cryoscope beside the ideal law, a sample a row. */
export function cryoscope(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Kryoskopie");
  put(sheet, 0, 0, "Messreihe Kryoskop, Vergleich mit dem idealen Gesetz");
  const kf = ["Kf von Wasser", shown(1.86, "0.00"), "K·kg/mol"];
  const constant = putRow(sheet, 2, 0, kf)[1]!;
  const heads = putRow(sheet, 4, 0, HEADS);
  const { list, tolerance } = problems(kit, 6);
  const rows = list.map((each, at) => sample(kit, sheet, 5 + at, { ...each, constant }));
  markRows(kit, rows, heads, constant);
  const text = `Ideal gerechnet, für diese verdünnten Proben auf ±${tolerance} K genau.`;
  const proviso = put(sheet, 12, 0, text);
  for (const row of rows) {
    const [, name, mass, water, molar, particles] = row as [Spot, Spot, Spot, Spot, Spot, Spot];
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [row[10]!], water, constant, depression: row[11]!, freezingPoint: row[12]! },
      proviso,
    });
  }
  note(kit, sheet, 14, 0, "Fühler am Morgen in Eiswasser geprüft: 0,00 °C.");
}
