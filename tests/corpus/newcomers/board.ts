import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";

interface Pan {
  readonly pair: readonly Dissolved[];
  readonly grams: readonly number[];
  readonly waterGrams: number;
}

function pan({ random }: Kit): Pan {
  const sugars = dissolved.filter(({ particles }) => particles === 1);
  const salt = dissolved.find(({ en }) => en === "sodium chloride")!;
  const pair = [...choose(random, 1, sugars), salt];
  const waterGrams = random.pick([400, 600, 750]);
  return { pair, waterGrams, grams: pair.map((each) => gramsOf(random, each, waterGrams)) };
}

/** Writes a label and numbers along a row; gives the numbers' cells. */
const along = (
  sheet: CorpusSheet,
  row: number,
  label: string,
  contents: readonly (string | number)[],
  format = "0",
): Spot[] =>
  putRow(sheet, row, 0, [label, ...contents.map((each) => shown(each, format))]).slice(1);

/** The particles of each and of both. */
function particlesOf(kit: Kit, sheet: CorpusSheet, { pair, grams }: Pan) {
  const names = putRow(sheet, 2, 1, [...pair.map(({ en }) => en)]);
  const masses = along(sheet, 3, "Goes in (g)", grams);
  const weights = pair.map(({ molarMass }) => molarMass);
  const molar = along(sheet, 4, "A mole weighs (g/mol)", weights, "0.00");
  const counts = pair.map((each) => each.particles);
  const particles = along(sheet, 5, "Particles from one, i", counts);
  const each = masses.map((mass, at) => `=${a1(mass)}/${a1(molar[at]!)}*${a1(particles[at]!)}`);
  const moles = along(sheet, 6, "Particles (mol)", each, "0.000");
  const [both] = along(sheet, 7, "Particles in all (mol)", [`=SUM(${span(moles)})`], "0.000");
  kit.marked.sums.push({ spot: both!, parts: moles });
  return { both: both!, marked: { names, grams: masses, molarMasses: molar, particles, moles } };
}

/** A sugar and a salt in one pan, worked out down the board. */
export function board(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "On the board");
  put(sheet, 0, 0, "Sugar and salt in one pan");
  const { pair, grams, waterGrams } = pan(kit);
  const dissolving = particlesOf(kit, sheet, { pair, grams, waterGrams });
  const line = (row: number, label: string, content: string | number, format?: string): Spot =>
    along(sheet, row, label, [content], format)[0]!;
  const water = line(9, "Water in the pan (g)", waterGrams);
  const constant = line(10, "Kf (K·kg/mol)", 1.86, "0.00");
  const law = `=${a1(constant)}*${a1(dissolving.both)}/${a1(water)}*1000`;
  const depression = line(11, "Freezing point falls by (K)", law, "0.00");
  const freezingPoint = line(12, "so the pan freezes at (°C)", `=-${a1(depression)}`, "0.00");
  const gap = tolerated(idealGap(pair, grams, waterGrams));
  const proviso = put(sheet, 14, 0, `Ideal solution; the true value is less than ${gap} K away.`);
  marked.inputs.push({ label: { ...water, column: 0 }, value: water, bare: "Water in the pan" });
  marked.solutions.push({
    ...dissolving.marked,
    ...{ water, constant, depression, freezingPoint, proviso },
  });
}
