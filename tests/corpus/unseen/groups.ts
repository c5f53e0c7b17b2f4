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
import { note, type Kit, type Layout } from "../kit";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { columnOf } from "../kitchens/hand";

const HEADS = [
  ...["Group", "Dissolved", "Water / g", "Solute / g", "M / (g/mol)", "n / mol"],
  ...["b / (mol/kg)", "i", "ΔT / K", "Predicted / °C", "Measured / °C", "Difference / K"],
];

/** What one group weighed, what the law gives for it, and what their thermometer said. */
function group(sheet: CorpusSheet, row: number, problem: Problem, constant: Spot): Spot[] {
  const { solute, grams, waterGrams } = problem;
  const given = putRow(sheet, row, 0, [
    ...[row - 5, solute.en, waterGrams, grams, shown(solute.molarMass, "0.00")],
  ]) as [Spot, Spot, Spot, Spot, Spot];
  const [, , water, mass, molar] = given;
  const at = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(formula, format));
  const moles = at(5, `=${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = at(6, `=${a1(moles)}/${a1(water)}*1000`, "0.000");
  const particles = put(sheet, row, 7, solute.particles);
  const law = `=${a1(particles)}*${fixed(constant)}*${a1(molality)}`;
  const depression = at(8, law, "0.00");
  const predicted = at(9, `=0-${a1(depression)}`, "0.00");
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const measured = put(sheet, row, 10, shown(real, "0.0"));
  const difference = at(11, `=${a1(measured)}-${a1(predicted)}`, "0.00");
  return [...given, moles, molality, particles, depression, predicted, measured, difference];
}

function markGroup({ marked }: Kit, cells: readonly Spot[], constant: Spot, proviso: Spot): void {
  const [, name, water, mass, molar, moles, , particles, depression, freezingPoint] = cells;
  marked.solutions.push({
    ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
    // The moles are those of "n / mol"; the molality beside them is an answer.
    ...{ moles: [moles!], water: water!, constant, proviso },
    ...{ depression: depression!, freezingPoint: freezingPoint! },
  });
}

/** Five groups of a school laboratory, a row each. */
function laboratory(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Lab day");
  put(sheet, 0, 0, "Lab day: how far down does it freeze?");
  const { list, tolerance } = problems(kit, 5);
  const constant = putRow(sheet, 2, 0, ["Kf(water) =", shown(1.86, "0.00"), "K·kg/mol"])[1]!;
  const text = `ΔT = i·Kf·b, for thin solutions only; here it is good to ${tolerance} K.`;
  const proviso = put(sheet, 3, 0, text);
  const heads = putRow(sheet, 5, 0, HEADS);
  const rows = list.map((problem, index) => group(sheet, 6 + index, problem, constant));
  for (const cells of rows) markGroup(kit, cells, constant, proviso);
  for (const at of [5, 6, 8, 9, 11]) {
    const spots = columnOf(rows, at);
    const reads = at === 8 ? [constant] : [];
    marked.formulaColumns.push({ spots, heading: heads[at]!, fixed: reads });
  }
  const measured = { spots: columnOf(rows, 10), heading: heads[10]! };
  marked.numberColumns.push({ ...measured, total: null, kind: "temperature" });
  const mean = `=AVERAGE(${span(columnOf(rows, 11))})`;
  putRow(sheet, 11, 10, ["on average", shown(mean, "0.00")]);
  note(kit, sheet, 13, 0, "Stir slowly and read the thermometer when the first crystals hold.");
}

/** Class sheets in English by the ideal law. */
export const groups: readonly Layout[] = [
  { name: "lab day, predicted and measured by group", language: "en", build: laboratory },
];
