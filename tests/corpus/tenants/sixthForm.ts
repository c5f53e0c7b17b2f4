import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { readings } from "./words";

const HEADS = [
  ...["Flask", "Dissolved substance", "i", "M / g mol⁻¹", "Mass added / g", "Water / g"],
  ...["Amount n / mol", "Molality b / mol kg⁻¹", "ΔT / K", "Predicted T / °C", "Observed T / °C"],
];

interface Page {
  readonly sheet: CorpusSheet;
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** One flask in its row: given, worked out, and seen in the ice bath. */
function flask(kit: Kit, problem: Problem, index: number, page: Page): Spot[] {
  const { sheet, constant, proviso } = page;
  const { solute, grams, waterGrams } = problem;
  const row = 4 + index;
  const given = ["A", "B", "C", "D", "E"][index];
  const cells = putRow(sheet, row, 0, [
    ...[given, solute.en, solute.particles, shown(solute.molarMass, "0.00"), grams, waterGrams],
  ]);
  const [, name, particles, molar, mass, water] = cells as [Spot, Spot, Spot, Spot, Spot, Spot];
  const step = (column: number, content: string, format: string): Spot =>
    put(sheet, row, column, shown(content, format));
  const moles = step(6, `=${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = step(7, `=${a1(moles)}/${a1(water)}*1000`, "0.000");
  const law = `=${a1(particles)}*${fixed(constant)}*${a1(molality)}`;
  const depression = step(8, law, "0.00");
  const freezingPoint = step(9, `=0-${a1(depression)}`, "0.00");
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const observed = put(sheet, row, 10, shown(real, "0.0"));
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
  return [moles, molality, depression, freezingPoint, observed];
}

const PROVISO = (kelvin: string) =>
  `The formula assumes an ideal solution; our flasks agree with it within ${kelvin} K.`;

/** Five flasks in the ice bath, worked out before they are looked at. */
function sixthForm(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Practical 7");
  put(sheet, 0, 0, "Practical 7: freezing points of solutions (year 12)");
  const constant = putRow(sheet, 1, 0, ["Kf (water) / K kg mol⁻¹", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 3, 0, HEADS);
  const { list, tolerance } = problems(kit, 5);
  const proviso = put(sheet, 10, 0, PROVISO(tolerance));
  const page = { sheet, constant, proviso };
  const rows = list.map((problem, index) => flask(kit, problem, index, page));
  [[], [], [constant], []].forEach((cells, at) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[6 + at]!, fixed: cells },
    }),
  );
  readings(kit, heads[10]!, columnOf(rows, 4));
  note(kit, sheet, 12, 0, "Write-up due after half term; goggles on at all times.");
}

/** A chemistry teacher of a sixth form. */
export const sixthForms: readonly Layout[] = [
  { name: "sixth form, practical with five flasks", language: "en", build: sixthForm },
];
