import { a1, addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { note, type Kit } from "../kit";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { down } from "./words";

const ROWS = [
  ["Solution", "-"],
  ["Dissolved substance", "-"],
  ["ms, mass dissolved", "g"],
  ["M, molar mass", "g/mol"],
  ["i, particles from one", "-"],
  ["mw, mass of water", "g"],
  ["n, amount dissolved", "mol"],
  ["b, molality", "mol/kg"],
  ["dT = i Kf b", "K"],
  ["T by calculation", "°C"],
  ["T by probe", "°C"],
] as const;

const TOP = 4;

/** One solution of known strength, down its column. */
function known(kit: Kit, column: number, problem: Problem, constant: Spot) {
  const sheet = kit.marked.book.sheets.at(-1)!;
  const { solute, grams, waterGrams } = problem;
  const cells = down(
    sheet,
    [TOP, column],
    [`S${column - 1}`, solute.en, grams, shown(solute.molarMass, "0.00"), solute.particles],
  );
  const [, name, mass, molar, particles] = cells as [Spot, Spot, Spot, Spot, Spot];
  const water = put(sheet, TOP + 5, column, waterGrams);
  const add = (row: number, formula: string, format: string): Spot =>
    put(sheet, TOP + row, column, shown(formula, format));
  const counted = add(6, `=${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = add(7, `=1000*${a1(counted)}/${a1(water)}`, "0.000");
  const drop = `=${a1(particles)}*${fixed(constant)}*${a1(molality)}`;
  const depression = add(8, drop, "0.00");
  const freezingPoint = add(9, `=-${a1(depression)}`, "0.00");
  const read = freezesAt(["water", solute.en], [waterGrams, grams]);
  put(sheet, TOP + 10, column, shown(read, "0.0"));
  return {
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [molality], counted: [counted], water, constant, depression, freezingPoint },
  };
}

/** The probe tried in solutions of known strength, worked out by hand. */
export function probeCheck(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Probe check");
  put(sheet, 0, 0, "Check of the probe against solutions of known strength");
  const kf = ["Kf, cryoscopic constant of water", "K·kg/mol", shown(1.86, "0.00")];
  const [, , constant] = putRow(sheet, 2, 0, kf);
  ROWS.forEach((words, index) => putRow(sheet, TOP + index, 0, words));
  const { list, tolerance } = problems(kit, 4);
  const words = `Ideal law, weak solutions: agreement within ${tolerance} K is as good as it gets.`;
  const proviso = put(sheet, TOP + 12, 0, words);
  list.forEach((problem, index) =>
    marked.solutions.push({ ...known(kit, 2 + index, problem, constant!), proviso }),
  );
  note(kit, sheet, TOP + 13, 0, "Repeat in the autumn. Ice bath first: reads 0.0.");
}
