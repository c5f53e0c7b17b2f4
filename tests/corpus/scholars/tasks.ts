import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Problem } from "../layouts/parts";
import * as words from "./words";

type Cells = Readonly<
  Record<
    "name" | "mass" | "water" | "molar" | "particles" | "constant" | "moles" | "depression",
    Spot
  >
> & { readonly freezingPoint: Spot };

/** What a question gives, at the left. */
const given = (sheet: CorpusSheet, row: number, { solute, waterGrams, grams }: Problem) =>
  words.block(
    sheet,
    { row, column: 1 },
    {
      name: ["dissolved", solute.en],
      mass: ["mass of it", grams, "g"],
      water: ["mass of water", waterGrams, "g"],
      molar: ["M", shown(solute.molarMass, "0.00"), "g/mol"],
      particles: ["ions or molecules from one unit", solute.particles],
      constant: ["Kf", shown(1.86, "0.00"), "K kg/mol"],
    },
  );

/** One question: what is given, what is wanted, and the way there beside it. */
function question(kit: Kit, problem: Problem, index: number): Cells {
  const sheet = kit.marked.book.sheets[0]!;
  const top = 2 + 8 * index;
  putRow(sheet, top, 0, [`Q${index + 1}`, "Given"]);
  putRow(sheet, top, 5, ["Wanted", "Working"]);
  putRow(sheet, top + 1, 5, ["freezing point"]);
  const known = given(sheet, top + 1, problem);
  const { mass, molar, water, particles, constant } = known;
  const line = (down: number, label: string, formula: string, format: string, unit: string) =>
    words.block(
      sheet,
      { row: top + down, column: 6 },
      { it: [label, shown(formula, format), unit] },
    ).it;
  const kilos = line(1, "water in kilograms", `=${a1(water)}/1000`, "0.000", "kg");
  const moles = line(2, "moles dissolved", `=${a1(mass)}/${a1(molar)}`, "0.0000", "mol");
  const each = `=${a1(moles)}/${a1(kilos)}`;
  const molality = line(3, "molality", each, "0.000", "mol/kg");
  const law = `=${a1(molality)}*${a1(constant)}*${a1(particles)}`;
  const depression = line(4, "lowering", law, "0.00", "K");
  const freezingPoint = line(5, "freezing point", `=0-${a1(depression)}`, "0.00", "°C");
  return { ...known, moles, depression, freezingPoint };
}

function push({ marked }: Kit, cells: Cells, proviso: Spot): void {
  const { name, mass, molar, particles, moles, ...others } = cells;
  marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], ...others, proviso },
  });
}

/** Four questions of a homework with their answers. */
function homework(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Homework 6 answers");
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "Homework 6: freezing points (model answers)");
  const text = `We take the solutions as ideal and dilute, good to ${tolerance} K here.`;
  const proviso = put(sheet, 1, 0, text);
  list.forEach((each, index) => push(kit, question(kit, each, index), proviso));
  note(kit, sheet, 0, 10, "Half marks for the moles alone.");
}

/** Sheets of homework. */
export const taskSheets: readonly Layout[] = [
  { name: "homework answers, given and wanted and working", language: "en", build: homework },
];
