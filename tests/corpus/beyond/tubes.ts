import { a1, addSheet, calledFrom, fixed, put, putRow, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { formulas } from "../layouts/marking";
import { problems, type Problem } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { sampleFreezesAt } from "./words";

const READ = [
  ...["Tube", "Dissolved", "m(solute) / g", "m(water) / g"],
  ...["run 1 / °C", "run 2 / °C", "run 3 / °C", "mean / °C"],
];
const WORKED = [
  ...["Tube", "Dissolved", "M / g mol⁻¹", "ν, particles per formula unit"],
  ...["n / mol", "b / mol kg⁻¹", "ΔTf / K", "Tf / °C"],
];
const TUBES = ["P", "Q", "R", "S", "T"];

/** What was weighed in, and three readings of each tube with their mean. */
function readingsSheet(kit: Kit, list: readonly Problem[]): Spot[][] {
  const sheet = addSheet(kit.marked.book, "Readings");
  put(sheet, 0, 0, "Practical 14: freezing points of five tubes, three runs each");
  note(kit, sheet, 1, 0, "Bath of crushed ice and rock salt. Stir until the first crystals show.");
  const heads = putRow(sheet, 3, 0, READ);
  const rows = list.map((each, index) => {
    const run = () =>
      shown(Number((sampleFreezesAt(each) + kit.random.whole(-1, 1) / 10).toFixed(1)), "0.0");
    const { solute, grams, waterGrams } = each;
    const cells = [TUBES[index], solute.en, grams, waterGrams, run(), run(), run()];
    return putRow(sheet, 4 + index, 0, cells);
  });
  for (const at of [4, 5, 6]) {
    const column = { spots: columnOf(rows, at), heading: heads[at]!, total: null };
    kit.marked.numberColumns.push({ ...column, kind: "temperature" });
  }
  const mean = (spot: Spot) => `=AVERAGE(${a1({ ...spot, column: 4 })}:${a1(spot)})`;
  beside(kit, heads[7]!, columnOf(rows, 6), { sheet, content: mean, format: "0.00" });
  note(kit, sheet, 11, 0, "Tube S was refilled after it cracked in the bath.");
  return rows;
}

/** A solute's line of the working: what is known of it. */
const known = ({ solute }: Problem, index: number) => [
  ...[TUBES[index], solute.en, shown(solute.molarMass, "0.00"), solute.particles],
];

/** The working on a sheet of its own, from the masses of the other. */
function tubes(kit: Kit): void {
  const { list, tolerance } = problems(kit, 5);
  const read = readingsSheet(kit, list);
  const sheet = addSheet(kit.marked.book, "Working");
  const constant = putRow(sheet, 0, 0, [
    "Kf(H2O) / K kg mol⁻¹",
    undefined,
    shown(1.86, "0.00"),
  ])[2]!;
  const heads = putRow(sheet, 2, 0, WORKED);
  const rows = list.map((each, index) => putRow(sheet, 3 + index, 0, known(each, index)));
  const column = (at: number, format: string, of: (index: number) => string, cells: Spot[] = []) =>
    formulas(
      kit,
      heads[at]!,
      rows.map((_, index) => shown(`=${of(index)}`, format)),
      { sheet, at: [3, at], fixed: cells },
    );
  const there = (index: number, at: number) => calledFrom(constant, read[index]![at]!);
  const moles = column(4, "0.00000", (at) => `${there(at, 2)}/${a1(rows[at]![2]!)}`);
  const molal = column(5, "0.000", (at) => `${a1(moles[at]!)}*1000/${there(at, 3)}`);
  const lowered = column(
    ...([6, "0.00"] as const),
    (at) => `${fixed(constant)}*${a1(molal[at]!)}*${a1(rows[at]![3]!)}`,
    [constant],
  );
  const points = column(7, "0.00", (at) => `0-${a1(lowered[at]!)}`);
  const text = `Solutions taken as ideal; at these strengths the error of that stays under ${tolerance} K.`;
  const proviso = put(sheet, 9, 0, text);
  rows.forEach(([, name, molar, particles], index) =>
    kit.marked.solutions.push({
      ...{ names: [name!], grams: [read[index]![2]!], molarMasses: [molar!] },
      ...{ particles: [particles!], moles: [moles[index]!], water: read[index]![3]!, constant },
      ...{ depression: lowered[index]!, freezingPoint: points[index]!, proviso },
    }),
  );
  note(kit, sheet, 11, 0, "Discuss: which tube is furthest from its mean, and why?");
}

/** A lab book of a sixth form. */
export const tubeSheets: readonly Layout[] = [
  { name: "sixth form lab book, five tubes read three times", language: "en", build: tubes },
];
