import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { problems, type Problem } from "../layouts/parts";
import { input } from "../page";
import { asFormulas, asTemperatures, readOff, rowsAt } from "./words";

const HEADS = [
  ...["Bench", "Dissolved", "m / g", "water / g", "M / g mol⁻¹", "i"],
  ...["n / mol", "b / mol kg⁻¹", "ΔT / K", "predicted T / °C"],
  ...["plateau 1 / °C", "plateau 2 / °C", "plateau 3 / °C", "mean / °C", "mean − predicted / K"],
];

interface Bench {
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** One bench: what it weighed in, what follows, and three plateaus read off its cooling curves. */
function bench(kit: Kit, sheet: CorpusSheet, problem: Problem, row: number, on: Bench): Spot[] {
  const { solute, grams, waterGrams } = problem;
  const { constant, proviso } = on;
  const [, name, mass, water, molar, particles] = putRow(sheet, row, 0, [
    ...[row - 6, solute.en, grams, waterGrams, shown(solute.molarMass, "0.00"), solute.particles],
  ]) as [Spot, Spot, Spot, Spot, Spot, Spot];
  const at = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(`=${formula}`, format));
  const moles = at(6, `${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = at(7, `${a1(moles)}/(${a1(water)}/1000)`, "0.000");
  const law = `${fixed(constant)}*${a1(molality)}*${a1(particles)}`;
  const depression = at(8, law, "0.00");
  const freezingPoint = at(9, `0-${a1(depression)}`, "0.00");
  const odd = kit.random.whole(10, 12);
  const plateaus = [10, 11, 12].map((column) =>
    put(sheet, row, column, readOff(problem, column === odd ? kit.random.whole(-1, 1) : 0)),
  );
  const mean = at(13, `AVERAGE(${a1(plateaus[0]!)}:${a1(plateaus[2]!)})`, "0.00");
  const off = at(14, `${a1(mean)}-${a1(freezingPoint)}`, "0.00");
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
  return [moles, molality, depression, freezingPoint, ...plateaus, mean, off];
}

/** When the cold baths were made and how cold they were. */
function baths(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 15, 1, ["Ice-salt bath", "filled at", "start / °C", "end / °C"]);
  const rows = rowsAt(
    sheet,
    { row: 16, column: 1 },
    ["window", "fume cupboard", "sink"].map((place, index) => [
      ...[place, `09:${15 + 5 * index}`],
      ...[-kit.random.whole(16, 19), -kit.random.whole(11, 14)],
    ]),
  );
  [2, 3].forEach((column) => {
    asTemperatures(kit, heads[column]!, columnOf(rows, column));
  });
}

/** Five benches, three cooling curves each. */
function plateaus(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Cooling curves");
  put(sheet, 0, 0, "Year 13 core practical 8: plateaus of five solutions");
  const constant = input(
    kit,
    sheet,
    { row: 2, column: 0 },
    { label: "Kf(H₂O) / K kg mol⁻¹", bare: "Kf(H₂O)", value: 1.86, format: "0.00" },
  );
  note(kit, sheet, 3, 0, "Stir until the first crystals show, then read every 20 s.");
  const heads = putRow(sheet, 6, 0, HEADS);
  const { list, tolerance } = problems(kit, 5);
  const words = `Predicted as for an ideal solution. At these strengths that is good to ${tolerance} K.`;
  const on = { constant, proviso: put(sheet, 13, 0, words) };
  const rows = list.map((each, index) => bench(kit, sheet, each, 7 + index, on));
  [[], [], [constant], []].forEach((cells, index) => {
    asFormulas(kit, heads[6 + index]!, columnOf(rows, index), cells);
  });
  [4, 5, 6].forEach((index) => {
    asTemperatures(kit, heads[6 + index]!, columnOf(rows, index));
  });
  [7, 8].forEach((index) => {
    asFormulas(kit, heads[6 + index]!, columnOf(rows, index));
  });
  baths(kit, sheet);
}

/** A sixth form's practical. */
export const plateauSheets: readonly Layout[] = [
  { name: "sixth form, plateaus of five cooling curves", language: "en", build: plateaus },
];
