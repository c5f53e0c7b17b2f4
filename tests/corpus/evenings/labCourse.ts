import {
  a1,
  addSheet,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { kilos } from "../layouts/marking";
import { markRecipe, say, sumOf, type Problem, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { plainOf } from "../lodgers/swaps";
import { reading } from "../scholars/words";
import { choose, dissolved } from "../solution";
import { VOICES } from "./voices";
import { below, lesson } from "./words";

interface Sheet {
  readonly title: string;
  readonly problem: Problem;
  readonly freezingPoint: Spot;
}

/** A quantity, its symbol, its value and its unit; gives the value's cell. */
const quantity = (sheet: CorpusSheet, row: number, cells: readonly Content[]): Spot =>
  putRow(sheet, row, 0, cells)[2]!;

/** What was weighed for a solution. */
function weighed(sheet: CorpusSheet, { solute, waterGrams, grams }: Problem) {
  const molarMass = shown(solute.molarMass, "0.00");
  return {
    name: quantity(sheet, 3, ["Solute", undefined, solute.en]),
    mass: quantity(sheet, 4, ["Mass of solute", "m₂", grams, "g"]),
    water: quantity(sheet, 5, ["Mass of water", "m₁", waterGrams, "g"]),
    molar: quantity(sheet, 6, ["Molar mass of solute", "M₂", molarMass, "g mol⁻¹"]),
    particles: quantity(sheet, 7, ["van 't Hoff factor", "i", solute.particles, "–"]),
    constant: quantity(sheet, 8, ["Cryoscopic constant", "Kf", shown(1.86, "0.00"), "K kg mol⁻¹"]),
  };
}

/** A page for one solution. */
function solutionPage(kit: Kit, problem: Problem, index: number, tolerance: string): Sheet {
  const title = `Solution ${index + 1}`;
  const sheet = addSheet(kit.marked.book, title);
  putRow(sheet, 0, 0, ["Physical chemistry I, practical 4", undefined, undefined, title]);
  putRow(sheet, 2, 0, ["Quantity", "Symbol", "Value", "Unit"]);
  const { name, mass, water, molar, particles, constant } = weighed(sheet, problem);
  const n = shown(`=${a1(mass)}/${a1(molar)}`, "0.0000");
  const moles = quantity(sheet, 10, ["Amount of solute", "n₂", n, "mol"]);
  const b = shown(`=1000*${a1(moles)}/${a1(water)}`, "0.000");
  const molality = quantity(sheet, 11, ["Molality", "b", b, "mol kg⁻¹"]);
  const law = shown(`=${a1(particles)}*${a1(constant)}*${a1(molality)}`, "0.00");
  const depression = quantity(sheet, 12, ["Freezing point depression", "ΔT", law, "K"]);
  const point = shown(`=-${a1(depression)}`, "0.00");
  const freezingPoint = quantity(sheet, 13, ["Freezing point", "T", point, "°C"]);
  const text = `Valid for ideal dilute solutions; here the error is ${tolerance} K or less.`;
  const proviso = put(sheet, 15, 0, text);
  note(kit, sheet, 16, 0, "Rinse with this solution before filling the tube.");
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
  return { title, problem, freezingPoint };
}

/** All solutions on a page, with what was read. */
function overview(kit: Kit, sheet: CorpusSheet, pages: readonly Sheet[]): void {
  put(sheet, 0, 0, "Results of the bench");
  const heads = ["Page", "Solute", "T calculated / °C", "T read / °C", "Cooling curve no."];
  const [, , calculated, read] = putRow(sheet, 2, 0, heads);
  const rows = pages.map(({ title, problem, freezingPoint }, index) => {
    const link = shown(`='${title}'!${a1(freezingPoint)}`, "0.00");
    const line = [title, problem.solute.en, link, shown(reading(problem), "0.0"), 11 + index];
    return putRow(sheet, 3 + index, 0, line);
  });
  const column = (at: number) => rows.map((cells) => cells[at]!);
  kit.marked.formulaColumns.push({ spots: column(2), heading: calculated!, fixed: [] });
  const spots = column(3);
  kit.marked.numberColumns.push({ spots, heading: read!, total: null, kind: "temperature" });
}

const SAID: readonly Said[] = [
  { label: "Depression, by the add-in", inCell: "K", states: "depression", as: "formula" },
  { label: "Freezing point", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Dissolved in it", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Ice in the mix at −12 °C",
    ...{ inCell: "%", states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** The ice made with liquid nitrogen, its mass over the list. */
function demonstration(kit: Kit, sheet: CorpusSheet): void {
  const made = kilos(plainOf(kit));
  put(sheet, 0, 0, `Lecture demonstration: ${made.title.toLowerCase()} with liquid nitrogen`);
  const place = { row: 4, column: 0 };
  const { heads, names, amounts, end } = listed(sheet, made, place, {
    ...{ heads: ["No.", "Component", "m / kg", "Weighed by"], name: 1, amount: 2 },
    cells: (item, grams, index) => [index + 1, item, shown(grams / 1000, "0.000")],
  });
  put(sheet, 2, 1, "Mass of the mix / kg");
  const total = sumOf(kit, sheet, { row: 2, column: 2 }, amounts, "0.000");
  const cells = { names, amounts, amountLabel: heads[2]!, total, unit: "kg" } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: 4, column: 6 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Texture wanted" });
  tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICES.lecture);
  below(sheet, { row: 12, column: 6 }, ["Nitrogen ordered (l): 5", "Steward: open both doors"]);
}

/** Solutions on pages of their own, an overview, and the demonstration. */
function labCourse(kit: Kit): void {
  const { list, tolerance } = lesson(kit, choose(kit.random, 3, dissolved), [50, 100, 150]);
  const pages = list.map((each, index) => solutionPage(kit, each, index, tolerance));
  overview(kit, addSheet(kit.marked.book, "Overview"), pages);
  demonstration(kit, addSheet(kit.marked.book, "Demonstration"));
}

/** Sheets of a laboratory course. */
export const labCourses: readonly Layout[] = [
  { name: "lab course, a page for each solution", language: "en", build: labCourse },
];
