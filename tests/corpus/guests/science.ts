import { a1, addSheet, fixed, put, putRow, shown, type Content, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { bagStand } from "./bagStand";

/** Every line of the working: what is done, and in which unit. */
const STEPS: readonly (readonly [string, string])[] = [
  ["What went into the beaker", ""],
  ["How much of it", "g"],
  ["Water in the beaker", "g"],
  ["Look up: mass of one mole", "g/mol"],
  ["Look up: bits made by one formula unit", ""],
  ["1. Moles = grams ÷ mass of one mole", "mol"],
  ["2. Moles of bits = moles × bits", "mol"],
  ["3. Share that out over one kilogram of water", "mol/kg"],
  ["4. Times Kf: the freezing point drops by", "K"],
  ["5. So it should freeze at", "°C"],
  ["Our thermometer said", "°C"],
];
const TOP = 5;

/** One beaker down its column, step by step; gives the thermometer's cell. */
function beaker(
  { marked, random }: Kit,
  { solute, grams, waterGrams }: Problem,
  column: number,
  shared: { readonly constant: Spot; readonly proviso: Spot },
): Spot {
  const sheet = marked.book.sheets[0]!;
  const at = (step: number, content: Content): Spot => put(sheet, TOP + step, column, content);
  const [name, mass, water] = [at(0, solute.en), at(1, grams), at(2, waterGrams)];
  const [molar, particles] = [at(3, shown(solute.molarMass, "0.00")), at(4, solute.particles)];
  const plain = at(5, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
  const moles = at(6, shown(`=${a1(plain)}*${a1(particles)}`, "0.0000"));
  const molality = at(7, shown(`=${a1(moles)}/(${a1(water)}/1000)`, "0.000"));
  const law = `=${a1(molality)}*${fixed(shared.constant)}`;
  const depression = at(8, shown(law, "0.00"));
  const freezingPoint = at(9, shown(`=-${a1(depression)}`, "0.00"));
  marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, depression, freezingPoint, ...shared },
  });
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const read = Math.min(-0.1, Number((real + random.whole(-1, 1) / 10).toFixed(1)));
  return at(10, shown(read, "0.0"));
}

/** Van 't Hoff by hand, a step a line, a beaker a column, the units after the beakers. */
function working(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Working");
  put(sheet, 0, 0, "Science club: why does the sea freeze later than the pond?");
  const kf = ["Kf of water, from the data book", shown(1.86, "0.00"), "K·kg/mol"];
  const constant = putRow(sheet, 2, 0, kf)[1]!;
  const { list, tolerance } = problems(kit, 4);
  const teams = ["Penguins", "Seals", "Bears", "Foxes"];
  putRow(sheet, 4, 0, ["Team", ...teams, "Unit"]);
  const labels = STEPS.map(([label, unit], index) => {
    if (unit !== "") put(sheet, TOP + index, 5, unit);
    return put(sheet, TOP + index, 0, label);
  });
  const text = `Rule for thin solutions. At these strengths it is right to about ${tolerance} K.`;
  const proviso = put(sheet, TOP + 13, 0, text);
  const read = list.map((problem, index) => beaker(kit, problem, 1 + index, { constant, proviso }));
  marked.numberColumns.push({
    ...{ spots: read, heading: labels[10]!, total: null, kind: "temperature" },
  });
  put(sheet, TOP + 11, 0, "Coldest of the four");
  const row = `${a1(read[0]!)}:${a1(read[3]!)}`;
  put(sheet, TOP + 11, 1, shown(`=MIN(${row})`, "0.0"));
  put(sheet, TOP + 11, 5, "°C");
  note(kit, sheet, TOP + 14, 0, "Goggles on. Thermometers are good to a tenth, so say so.");
}

/** Sheets of someone who shows science to the young. */
export const science: readonly Layout[] = [
  { name: "science club, working step by step", language: "en", build: working },
  { name: "outreach stand, ice cream in a bag", language: "en", build: bagStand },
];
