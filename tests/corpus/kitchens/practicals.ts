import { a1, addSheet, fixed, put, putRow, shown, type Content, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Problem } from "../layouts/parts";

/** Where the cells of one worked solution stand. */
interface Worked {
  readonly name: Spot;
  readonly mass: Spot;
  readonly molar: Spot;
  readonly particles: Spot;
  readonly water: Spot;
  readonly molality: Spot;
  readonly depression: Spot;
  readonly freezingPoint: Spot;
}

function markWorked(kit: Kit, worked: Worked, constant: Spot, proviso: Spot): void {
  const { name, mass, molar, particles, molality, ...rest } = worked;
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [molality], constant, proviso, ...rest },
  });
}

/** One experiment down two columns, with symbols between the words and the numbers. */
function experiment(
  { marked }: Kit,
  top: number,
  { solute, grams, waterGrams }: Problem,
  constant: Spot,
): Worked {
  const sheet = marked.book.sheets[0]!;
  let row = top;
  const line = (label: string, symbol: Content, content: Content, unit?: string): Spot =>
    putRow(sheet, row++, 1, [label, symbol, content, unit])[2]!;
  const name = line("Solute", undefined, solute.en);
  const mass = line("Mass of solute", "m", grams, "g");
  const molar = line("Molar mass", "M", shown(solute.molarMass, "0.00"), "g/mol");
  const particles = line("Particles per formula unit", "i", solute.particles);
  const water = line("Mass of water", "w", waterGrams, "g");
  const molal = `=(${a1(mass)}/${a1(molar)})/(${a1(water)}/1000)`;
  const molality = line("Molality", "b", shown(molal, "0.000"), "mol/kg");
  const law = `=${fixed(constant)}*${a1(molality)}*${a1(particles)}`;
  const depression = line("Depression of the freezing point", "ΔT", shown(law, "0.00"), "K");
  const point = shown(`=0-${a1(depression)}`, "0.00");
  const freezingPoint = line("Freezing point of the solution", "T", point, "°C");
  return { name, mass, molar, particles, water, molality, depression, freezingPoint };
}

/** Two experiments one below the other, the constant they share above both. */
function practical(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Practical 6");
  put(sheet, 0, 0, "Food physics, practical 6: freezing of solutions");
  const kf = ["Cryoscopic constant of water", "Kf", shown(1.86, "0.00"), "K·kg/mol"];
  const constant = putRow(sheet, 2, 1, kf)[2]!;
  const { list, tolerance } = problems(kit, 2);
  const proviso = put(
    sheet,
    26,
    1,
    `Ideal solution assumed; results are good to ±${tolerance} K, no better.`,
  );
  list.forEach((problem, index) => {
    const top = 4 + 11 * index;
    put(sheet, top, 0, `Experiment ${"AB"[index]}`);
    const worked = experiment(kit, top + 1, problem, constant);
    markWorked(kit, worked, constant, proviso);
    if (index === 0) marked.notes.push(put(sheet, top + 9, 1, "Stir until the solute is gone."));
  });
}

const LINES = ["Tray", "Dissolved in it", "Weighed in", "Molar mass", "Particles i", "Water"];
const ANSWERS = ["Particles in all", "Molality of particles", "Depression", "Freezing point"];
const UNITS = [undefined, undefined, "g", "g/mol", undefined, "g", "mol", "mol/kg", "K", "°C"];

/** Trays beside each other, the units in a column after the labels. */
function trayRow(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Trays");
  put(sheet, 0, 0, "Five trays for the blast chiller");
  const [, , constant] = putRow(sheet, 1, 0, ["Kf", "K·kg/mol", shown(1.86, "0.00")]);
  [...LINES, ...ANSWERS].forEach((each, index) =>
    putRow(sheet, 3 + index, 0, [each, UNITS[index]]),
  );
  const { list, tolerance } = problems(kit, 5);
  const proviso = put(sheet, 14, 0, `All by the ideal law. Tolerance: ${tolerance} K.`);
  list.forEach(({ solute, grams, waterGrams }, index) => {
    const at = (step: number, content: string | number, format?: string): Spot =>
      put(sheet, 3 + step, 2 + index, format === undefined ? content : shown(content, format));
    at(0, index + 1);
    const [name, mass, molar] = [at(1, solute.en), at(2, grams), at(3, solute.molarMass, "0.00")];
    const [particles, water] = [at(4, solute.particles), at(5, waterGrams)];
    const moles = at(6, `=${a1(mass)}/${a1(molar)}*${a1(particles)}`, "0.0000");
    const molality = at(7, `=1000*${a1(moles)}/${a1(water)}`, "0.000");
    const depression = at(8, `=${fixed(constant!)}*${a1(molality)}`, "0.00");
    const freezingPoint = at(9, `=-${a1(depression)}`, "0.00");
    const worked = { name, mass, molar, particles, water, depression, freezingPoint };
    markWorked(kit, { ...worked, molality: moles }, constant!, proviso);
  });
  note(kit, sheet, 15, 0, "Take the trays out in the order of their numbers.");
}

/** Sheets of a lecturer with formulas by the ideal law. */
export const practicals: readonly Layout[] = [
  { name: "practical, experiments A and B", language: "en", build: practical },
  { name: "trays with units after the labels", language: "en", build: trayRow },
];
