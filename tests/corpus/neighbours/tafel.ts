import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { iceInABag } from "./beutel";

const HEADS = [
  ...["Gruppe", "Stoff", "Masse Stoff (g)", "Masse Wasser (g)", "M (g/mol)", "Teilchen je Einheit"],
  ...["n Stoff (mol)", "b aller Teilchen (mol/kg)", "ΔT berechnet (K)", "Gefrierpunkt (°C)"],
  ...["am Thermometer (°C)", "Unterschied (K)"],
];

interface Group {
  readonly problem: Problem;
  readonly row: number;
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** One group's solution in its row; gives the cells with formulas and the reading before the last. */
function group(kit: Kit, sheet: CorpusSheet, { problem, row, constant, proviso }: Group): Spot[] {
  const { solute, grams, waterGrams } = problem;
  const given = putRow(sheet, row, 0, [
    ...[row - 6, solute.de, grams, waterGrams, shown(solute.molarMass, "0.00"), solute.particles],
  ]);
  const [, name, mass, water, molar, particles] = given as [Spot, ...Spot[]];
  const amount = put(sheet, row, 6, shown(`=${a1(mass!)}/${a1(molar!)}`, "0.0000"));
  const all = `=${a1(particles!)}*${a1(amount)}*1000/${a1(water!)}`;
  const molality = put(sheet, row, 7, shown(all, "0.000"));
  const law = `=${fixed(constant)}*${a1(molality)}`;
  const depression = put(sheet, row, 8, shown(law, "0.00"));
  const freezingPoint = put(sheet, row, 9, shown(`=0-${a1(depression)}`, "0.00"));
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const read = put(sheet, row, 10, shown(real, "0.0"));
  const gap = put(sheet, row, 11, shown(`=${a1(read)}-${a1(freezingPoint)}`, "0.00"));
  kit.marked.solutions.push({
    ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
    // Nuts among the solutes are counted in the moles as well as in the molality of all particles.
    ...{
      moles: [molality],
      counted: [amount],
      water: water!,
      constant,
      depression,
      freezingPoint,
      proviso,
    },
  });
  return [amount, molality, depression, freezingPoint, gap, read];
}

/** What the class saw in syrup: strength given in both ways, worked out in the head. */
function sugarWater({ marked, random }: Kit, sheet: CorpusSheet, top: number): void {
  put(sheet, top, 0, "Zur Wiederholung: zwei Arten, den Gehalt anzugeben");
  putRow(sheet, top + 1, 1, [
    ...["Lösung", "Wasser (g)", "Zucker (g)", "Zucker auf 100 g Wasser (g)", "Massenanteil (%)"],
  ]);
  ["Limonade", "Sirup", "Marmelade"].forEach((name, index) => {
    const wet = [500, 150, 80][index]!;
    const sweet = [random.whole(45, 65), random.whole(120, 180), random.whole(130, 150)][index]!;
    const ratio = Number(((100 * sweet) / wet).toFixed(1));
    const contents = [name, wet, sweet, shown(ratio, "0.0")];
    const [, water, sugar, perWater] = putRow(sheet, top + 2 + index, 1, contents);
    const typed = Number(((100 * sweet) / (wet + sweet)).toFixed(1));
    const share = put(sheet, top + 2 + index, 5, shown(typed, "0.0"));
    marked.strengths.push({ sugar: sugar!, water: water!, perWater: perWater!, share });
  });
}

/** Six groups, each with a solution; the law on the board above. */
function board(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Gefrierpunkt");
  put(sheet, 0, 0, "Q1 Chemie: Lösungen gefrieren tiefer als Wasser");
  put(sheet, 1, 0, "Tafelbild: ΔT = Kf · b, wobei b alle Teilchen zählt (Raoult)");
  const kf = ["Kf Wasser", undefined, shown(1.86, "0.00"), "K·kg/mol"];
  const constant = putRow(sheet, 3, 0, kf)[2]!;
  const { list, tolerance } = problems(kit, 6);
  const text = `Das gilt für verdünnte Lösungen; hier trifft die Rechnung auf ${tolerance} K genau.`;
  const proviso = put(sheet, 4, 0, text);
  const heads = putRow(sheet, 6, 0, HEADS);
  const rows = list.map((problem, index) =>
    group(kit, sheet, { problem, row: 7 + index, constant, proviso }),
  );
  [[], [], [constant], [], []].forEach((cells, at) => {
    const heading = heads[at < 4 ? 6 + at : 11]!;
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading, fixed: cells });
  });
  const spots = columnOf(rows, 5);
  marked.numberColumns.push({ spots, heading: heads[10]!, total: null, kind: "temperature" });
  sugarWater(kit, sheet, 14);
  note(kit, sheet, 20, 0, "Gruppe 3 misst noch einmal, das Glas war nicht trocken.");
}

/** Sheets of a woman who teaches chemistry. */
export const lehrerin: readonly Layout[] = [
  { name: "Chemieunterricht, Gefrierpunkt an der Tafel", language: "de", build: board },
  { name: "Chemieunterricht, Kältemischung und Eis im Beutel", language: "de", build: iceInABag },
];
