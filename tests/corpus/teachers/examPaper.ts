import { addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, sumOf, type Problem } from "../layouts/parts";
import { reading } from "../scholars/words";
import { temperatures } from "../strollers/words";
import { inColumn, markSample, under, worked } from "./words";

const ROWS = [5, 6, 7, 8];

const PAPER = [
  ...["Part", "Substance", "Taken (g)", "Into water (g)", "Mr (g/mol)", "Ions or molecules"],
  "Thermometer (°C)",
];

/** The candidates' table: what is given in each part. */
function paper(kit: Kit, list: readonly Problem[]): Spot[][] {
  const sheet = addSheet(kit.marked.book, "Paper");
  put(sheet, 0, 0, "Unit test 4B: Colligative properties");
  put(sheet, 1, 0, "40 minutes, calculators allowed, data booklet page 3");
  put(sheet, 3, 0, "Q2. For each part find the freezing point that the dilute law predicts.");
  const heads = putRow(sheet, 4, 0, PAPER);
  temperatures(kit, heads[6]!, under(heads[6]!, list.length));
  note(kit, sheet, 10, 0, "Q3. Which part agrees worst with its thermometer, and why?");
  return list.map((problem, index) => {
    const { solute, grams, waterGrams } = problem;
    const masses = ["abcd"[index], solute.en, grams, waterGrams];
    const molar = shown(solute.molarMass, "0.00");
    const read = shown(reading(problem), "0.0");
    return putRow(sheet, 5 + index, 0, [...masses, molar, solute.particles, read]);
  });
}

const SCHEME = [
  ...["Part", "mol", "mol/kg", "mol/kg of particles", "Lowering (K)", "Answer (°C)"],
  ...["Method marks", "Answer marks", "Total marks"],
];

/** The marks of each part and of the question. */
function marksOf(kit: Kit, sheet: CorpusSheet, heads: readonly Spot[]): void {
  const [method, answer] = [6, 7].map((column) =>
    ROWS.map((row) => put(sheet, row, column, column === 6 ? 3 : kit.random.pick([1, 2]))),
  ) as [Spot[], Spot[]];
  const formula = (row: number) => `${inColumn(6)(row)}+${inColumn(7)(row)}`;
  const totals = worked(kit, sheet, heads[8]!, ROWS, { formula, format: "0" });
  put(sheet, 9, 0, "Q2");
  [method, answer, totals].forEach((parts, index) =>
    sumOf(kit, sheet, { row: 9, column: 6 + index }, parts),
  );
}

/** The marker's sheet, which reads the paper. */
function scheme(kit: Kit, given: readonly Spot[][], tolerance: string): void {
  const sheet = addSheet(kit.marked.book, "Mark scheme");
  put(sheet, 0, 0, "For markers only. Error carried forward: yes.");
  const constant = putRow(sheet, 2, 0, ["Kf, water (K kg/mol)", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 4, 0, SCHEME);
  ROWS.forEach((row, index) => put(sheet, row, 0, "abcd"[index]));
  const onPaper = (column: number) => (row: number) => `Paper!${inColumn(column)(row)}`;
  const [grams, water, molar, count] = [2, 3, 4, 5].map(onPaper);
  const [moles, molality, particles, lowering] = [1, 2, 3, 4].map(inColumn);
  const column = (
    at: number,
    format: string,
    formula: (row: number) => string,
    read: Spot[] = [],
  ) => worked(kit, sheet, heads[at]!, ROWS, { formula, format, fixed: read });
  const n = column(1, "0.0000", (row) => `${grams!(row)}/${molar!(row)}`);
  column(2, "0.000", (row) => `${moles!(row)}/(${water!(row)}/1000)`);
  column(3, "0.000", (row) => `${molality!(row)}*${count!(row)}`);
  const drops = column(4, "0.00", (row) => `${particles!(row)}*${fixed(constant)}`, [constant]);
  const points = column(5, "0.00", (row) => `-${lowering!(row)}`);
  marksOf(kit, sheet, heads);
  const text = `Accept any answer within ${tolerance} K of a real solution: that is what the dilute law can do here.`;
  const proviso = put(sheet, 11, 0, text);
  given.forEach(([, name, mass, waterAt, molarAt, pieces], index) => {
    const shared = { name: name!, grams: mass!, molar: molarAt!, particles: pieces! };
    const answers = { depression: drops[index]!, freezingPoint: points[index]! };
    const rest = { moles: n[index]!, water: waterAt!, constant, proviso };
    markSample(kit, { ...shared, ...answers, ...rest });
  });
}

/** A test: what is given on one sheet, the answers and their marks on another. */
function examPaper(kit: Kit): void {
  const { list, tolerance } = problems(kit, 4);
  scheme(kit, paper(kit, list), tolerance);
}

/** A test with its mark scheme. */
export const examPapers: readonly Layout[] = [
  { name: "unit test with its mark scheme", language: "en", build: examPaper },
];
