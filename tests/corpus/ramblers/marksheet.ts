import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { temperatures } from "../strollers/words";
import { fact } from "./words";

const HEADS = [
  ...["Pair", "Unknown was", "Solute (g)", "Water (g)", "Molar mass (g/mol)", "Moles"],
  ...["Molality (mol/kg)", "i", "Key: ΔTf (K)", "Key: Tf (°C)", "They measured (°C)"],
  ...["They calculated (°C)", "Calculated − key (K)", "Report (of 10)", "Points"],
];

const PAIRS = ["A1", "A2", "A3", "B1", "B2", "B3"];

interface Rubric {
  readonly kf: Spot;
  readonly close: Spot;
  readonly full: Spot;
}

/** The key for one pair: moles, molality, depression and freezing point. */
function key(sheet: CorpusSheet, row: number, { solute, grams, waterGrams }: Problem, kf: Spot) {
  const given = [solute.en, grams, waterGrams, shown(solute.molarMass, "0.00")];
  const [name, mass, water, molar] = putRow(sheet, row, 1, given) as [Spot, Spot, Spot, Spot];
  const next = (column: number, formula: string, format: string) =>
    put(sheet, row, column, shown(formula, format));
  const moles = next(5, `=${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = next(6, `=${a1(moles)}/(${a1(water)}/1000)`, "0.000");
  const particles = put(sheet, row, 7, solute.particles);
  const law = `=${a1(particles)}*${fixed(kf)}*${a1(molality)}`;
  const depression = next(8, law, "0.00");
  const point = next(9, `=-1*${a1(depression)}`, "0.00");
  return { name, mass, water, molar, moles, molality, particles, depression, point };
}

/** What the pair handed in and what it earns. */
function handedIn({ random }: Kit, sheet: CorpusSheet, row: number, each: Problem, rubric: Rubric) {
  const { solute, waterGrams, grams } = each;
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const measured = Math.min(-0.1, Number((real + random.whole(-1, 1) / 10).toFixed(1)));
  const ideal = (-1.86 * solute.particles * grams * 1000) / (solute.molarMass * waterGrams);
  const own = ideal * random.pick([1, 1, 1, 0.93, 1.08]);
  const [read, theirs] = putRow(sheet, row, 10, [
    ...[shown(measured, "0.0"), shown(Number(own.toFixed(2)), "0.00")],
  ]) as [Spot, Spot];
  const key = a1({ ...read, column: 9 });
  const off = put(sheet, row, 12, shown(`=${a1(theirs)}-${key}`, "0.00"));
  const report = put(sheet, row, 13, random.whole(5, 10));
  const earned = `IF(ABS(${a1(off)})<=${fixed(rubric.close)},${fixed(rubric.full)},0)`;
  const points = put(sheet, row, 14, `=${a1(report)}+${earned}`);
  return [read, theirs, off, points] as const;
}

/** A pair's row, marked; gives its computed cells and its readings. */
function pair(
  kit: Kit,
  sheet: CorpusSheet,
  at: number,
  each: Problem,
  rubric: Rubric & { proviso: Spot },
) {
  const row = 7 + at;
  put(sheet, row, 0, PAIRS[at]);
  const keyed = key(sheet, row, each, rubric.kf);
  const { name, mass, water, molar, moles, molality, particles, depression, point } = keyed;
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant: rubric.kf, depression, freezingPoint: point },
    proviso: rubric.proviso,
  });
  const [read, theirs, off, points] = handedIn(kit, sheet, row, each, rubric);
  return [moles, molality, depression, point, read, theirs, off, points];
}

/** Marks what stands in columns. */
function markColumns(kit: Kit, rows: readonly Spot[][], heads: readonly Spot[], rubric: Rubric) {
  const { kf, close, full } = rubric;
  const columns: readonly (readonly [at: number, held: readonly Spot[]])[] = [
    ...([
      [0, []],
      [1, []],
      [2, [kf]],
      [3, []],
      [6, []],
    ] as const),
    [7, [close, full]],
  ];
  for (const [at, held] of columns) {
    const spots = columnOf(rows, at);
    kit.marked.formulaColumns.push({ spots, heading: heads[spots[0]!.column]!, fixed: held });
  }
  temperatures(kit, heads[10]!, columnOf(rows, 4));
}

/** Six pairs and their unknowns, marked against a key. */
function marksheet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Section 04 marks");
  put(sheet, 0, 0, "Freezing point lab, section 04: key and marks");
  const at = (row: number) => ({ row, column: 0 });
  const kf = fact(sheet, at(1), "Kf (K kg/mol)", shown(1.86, "0.00"));
  const close = fact(sheet, at(2), "Counts as right within (K)", shown(0.05, "0.00"));
  const full = fact(sheet, at(3), "Points for a right answer", 5);
  const { list, tolerance } = problems(kit, 6);
  const words = `Key by the ideal law; the true value may be ${tolerance} K away, so mark the working.`;
  const proviso = put(sheet, 4, 0, words);
  const heads = putRow(sheet, 6, 0, HEADS);
  const rubric = { kf, close, full, proviso };
  const rows = list.map((each, index) => pair(kit, sheet, index, each, rubric));
  markColumns(kit, rows, heads, rubric);
  putRow(sheet, 14, 13, ["Mean", shown(`=AVERAGE(${span(columnOf(rows, 7))})`, "0.0")]);
  note(kit, sheet, 16, 0, "B2 forgot to stir, read the plateau of their second run instead.");
}

/** A teaching assistant's marks. */
export const marksheets: readonly Layout[] = [
  { name: "teaching assistant, six unknowns marked", language: "en", build: marksheet },
];
