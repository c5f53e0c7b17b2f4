import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { problems, type Problem } from "../layouts/parts";
import { choose, gramsOf, idealGap, tolerated } from "../solution";

const HEADS = ["Jar", "Water (g)", "Added", "of it (g)", "M (g/mol)", "i"];
const WORKED = ["n (mol)", "n × i (mol)", "Drop (K)", "Freezes at (°C)"];

/** One jar along its row. */
function jar(sheet: CorpusSheet, row: number, { solute, grams, waterGrams }: Problem, kf: Spot) {
  const given: readonly Content[] = [
    ...["ABCDEF"[row - 4], waterGrams, solute.en, grams],
    ...[shown(solute.molarMass, "0.00"), solute.particles],
  ];
  const cells = putRow(sheet, row, 0, given);
  const [, water, , mass, molar, particles] = cells as [Spot, Spot, Spot, Spot, Spot, Spot];
  const counted = put(sheet, row, 6, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
  const moles = put(sheet, row, 7, shown(`=${a1(counted)}*${a1(particles)}`, "0.0000"));
  const law = `=${fixed(kf)}*${a1(moles)}*1000/${a1(water)}`;
  const drop = put(sheet, row, 8, shown(law, "0.00"));
  return [...cells, counted, moles, drop, put(sheet, row, 9, shown(`=-${a1(drop)}`, "0.00"))];
}

/** Jars in a freezing mixture, a row each. */
function jars(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Jars");
  put(sheet, 0, 0, "Why the sea freezes later than a pond");
  const [, kf] = putRow(sheet, 1, 0, ["Kf of water (K kg/mol)", shown(1.86, "0.00")]);
  const heads = putRow(sheet, 3, 0, [...HEADS, ...WORKED]);
  const { list, tolerance } = problems(kit, 6);
  const text = `Ideal law: expect your thermometer within ${tolerance} K of the last columns.`;
  const proviso = put(sheet, 11, 0, text);
  const rows = list.map((problem, index) => jar(sheet, 4 + index, problem, kf!));
  for (const cells of rows) {
    const [, water, name, mass, molar, particles, counted, moles, drop, point] = cells;
    marked.solutions.push({
      ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
      ...{ counted: [counted!], moles: [moles!], water: water!, constant: kf!, proviso },
      ...{ depression: drop!, freezingPoint: point! },
    });
  }
  [6, 7, 8, 9].forEach((column) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, column), heading: heads[column]! },
      fixed: column === 8 ? [kf!] : [],
    }),
  );
  note(kit, sheet, 12, 0, "Swirl every five minutes; read when the first ice stays.");
}

const ROWS = [
  "Dissolved",
  "Mass (g)",
  "Molar mass (g/mol)",
  "Particles each",
  "Moles",
  "Moles of particles",
];

/** What is dissolved, a column each; the cells from top to bottom. */
function dissolvedColumn(sheet: CorpusSheet, column: number, down: readonly Content[]): Spot[] {
  const spots = down.map((content, index) => put(sheet, 3 + index, column, content));
  const [, mass, molar, particles] = spots as [Spot, Spot, Spot, Spot];
  const moles = put(sheet, 7, column, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
  const all = put(sheet, 8, column, shown(`=${a1(moles)}*${a1(particles)}`, "0.0000"));
  return [...spots, moles, all];
}

/** One solution, added up along a row and worked out below. */
function pot(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "By the law");
  put(sheet, 0, 0, "Cookery college, module 4: one solution, three things in it");
  ROWS.forEach((label, index) => put(sheet, 3 + index, 0, label));
  const solutes = choose(random, 3);
  const waterGrams = random.pick([300, 500, 750]);
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams));
  const columns = solutes.map(({ en, molarMass, particles }, index) =>
    dissolvedColumn(sheet, 1 + index, [en, grams[index], shown(molarMass, "0.00"), particles]),
  );
  const at = (row: number): Spot[] => columnOf(columns, row);
  const line = (row: number, label: string, content: Content): Spot =>
    putRow(sheet, row, 0, [label, content])[1]!;
  const water = line(10, "Water it is all in (g)", waterGrams);
  const constant = line(11, "Cryoscopic constant (K·kg/mol)", shown(1.86, "0.00"));
  const [first, last] = [at(5)[0]!, at(5).at(-1)!];
  const sum = line(
    12,
    "Particles, all three (mol)",
    shown(`=SUM(${a1(first)}:${a1(last)})`, "0.0000"),
  );
  marked.sums.push({ spot: sum, parts: at(5) });
  const perKilo = shown(`=${a1(sum)}/(${a1(water)}/1000)`, "0.000");
  const molality = line(13, "Particles per kg of water (mol/kg)", perKilo);
  const law = shown(`=${a1(constant)}*${a1(molality)}`, "0.00");
  const depression = line(14, "Freezing point goes down by (K)", law);
  const freezingPoint = line(15, "New freezing point (°C)", shown(`=0-${a1(depression)}`, "0.00"));
  const gap = tolerated(idealGap(solutes, grams, waterGrams));
  const proviso = put(sheet, 17, 0, `As if ideal; the real one lies within ${gap} K of this.`);
  marked.solutions.push({
    ...{ names: at(0), grams: at(1), molarMasses: at(2), particles: at(3), counted: at(4) },
    ...{ moles: at(5), water, constant, depression, freezingPoint, proviso },
  });
  const label = { ...water, column: 0 };
  marked.inputs.push({ label, value: water, bare: "Water it is all in" });
  note(kit, sheet, 18, 0, "Hand in with your name and the mark you would give yourself.");
}

/** Lessons on the ideal law. */
export const jarLessons: readonly Layout[] = [
  { name: "physics lesson, jars A to F in rows", language: "en", build: jars },
  { name: "cookery college, one solution added up", language: "en", build: pot },
];
