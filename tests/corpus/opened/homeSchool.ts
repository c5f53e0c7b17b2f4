import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt } from "../layouts/parts";
import { input } from "../page";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";

const HEADS = [
  ...["Jar", "Stirred in", "Grams", "Grams in a mole", "Bits it splits into", "Moles of bits"],
  ...["Moles of bits per kg water", "Drop (K)", "Should freeze at (°C)", "We read (°C)"],
];

interface Jar {
  readonly solute: Dissolved;
  readonly grams: number;
}

interface Bench {
  readonly water: Spot;
  readonly waterGrams: number;
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** One jar in its row; gives its formulas and what was read. */
function jarRow(kit: Kit, sheet: CorpusSheet, jar: Jar, index: number, bench: Bench): Spot[] {
  const { solute, grams } = jar;
  const { water, waterGrams, constant, proviso } = bench;
  const row = 7 + index;
  const cells = putRow(sheet, row, 0, [
    ...["ABCDE"[index], solute.en, grams, shown(solute.molarMass, "0.00"), solute.particles],
  ]);
  const [, name, mass, molar, bits] = cells as [Spot, Spot, Spot, Spot, Spot];
  const worked = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(formula, format));
  const moles = worked(5, `=${a1(mass)}/${a1(molar)}*${a1(bits)}`, "0.0000");
  const perKilo = worked(6, `=${a1(moles)}/(${fixed(water)}/1000)`, "0.000");
  const depression = worked(7, `=${fixed(constant)}*${a1(perKilo)}`, "0.00");
  const freezingPoint = worked(8, `=0-${a1(depression)}`, "0.00");
  const read = freezesAt(["water", solute.en], [waterGrams, grams]);
  const seen = put(sheet, row, 9, shown(read, "0.0"));
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [bits] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
  return [moles, perKilo, depression, freezingPoint, seen];
}

/** Marks the columns of the answers. */
function markAll(kit: Kit, rows: readonly Spot[][], heads: readonly Spot[], bench: Bench): void {
  const { marked } = kit;
  [[], [bench.water], [bench.constant], []].forEach((cells, at) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[5 + at]!, fixed: cells },
    }),
  );
  const seen = { spots: columnOf(rows, 4), heading: heads[9]!, total: null };
  marked.numberColumns.push({ ...seen, kind: "temperature" });
}

/** A parent who teaches at home: five jars left on the step overnight. */
function homeSchool(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Jars");
  put(sheet, 0, 0, "Which jar freezes last? Five jars on the back step");
  put(sheet, 1, 0, "Our guess first, then the sum, then the thermometer.");
  const bare = "Water in every jar";
  const waterGrams = random.pick([200, 250, 300]);
  const words = { label: `${bare} (g)`, bare, value: waterGrams };
  const water = input(kit, sheet, { row: 3, column: 0 }, words);
  const constant = putRow(sheet, 4, 0, ["Water's number Kf (K kg/mol)", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 6, 0, HEADS);
  const jars = choose(random, 5, dissolved).map((solute) => ({
    ...{ solute, grams: gramsOf(random, solute, waterGrams) },
  }));
  const gaps = jars.map(({ solute, grams }) => idealGap([solute], [grams], waterGrams));
  const proviso = put(
    sheet,
    13,
    0,
    `The sum is only good for weak jars: it was within ${tolerated(Math.max(...gaps))} K of the real thing.`,
  );
  const bench = { water, waterGrams, constant, proviso };
  const rows = jars.map((jar, index) => jarRow(kit, sheet, jar, index, bench));
  markAll(kit, rows, heads, bench);
  note(kit, sheet, 15, 0, "Ask: why is a spoon of salt stronger than a spoon of sugar?");
}

export const homeSchools: readonly Layout[] = [
  { name: "home school, five jars on the back step", language: "en", build: homeSchool },
];
