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
import { note, type Kit, type Layout } from "../kit";
import { problems, type Problem } from "../layouts/parts";
import { classIce } from "./klasseneis";

/** Lines of a symbol, its number and its unit; gives the cells of the numbers. */
const given = (sheet: CorpusSheet, row: number, lines: readonly (readonly Content[])[]): Spot[] =>
  lines.map((cells, index) => putRow(sheet, row + index, 1, cells)[1]!);

/** The steps of an exercise, each from the one before; gives moles, depression and answer. */
function steps(sheet: CorpusSheet, row: number, cells: readonly Spot[]): Spot[] {
  const [, mass, molar, particles, water, constant] = cells.map(a1);
  put(sheet, row, 1, "Rechnung");
  const step = (down: number, label: string, formula: string, unit: string, format = "0.00") =>
    putRow(sheet, row + down, 1, [label, shown(formula, format), unit])[1]!;
  const amount = step(1, "n = m : M", `=${mass}/${molar}`, "mol", "0.0000");
  const molal = `=${a1(amount)}*1000/${water}`;
  const molality = step(2, "b = n : m(Wasser)", molal, "mol/kg", "0.000");
  const law = `=${constant}*${a1(molality)}*${particles}`;
  const depression = step(3, "ΔT = Kf · b · i", law, "K");
  return [amount, depression, step(4, "Gefrierpunkt", `=0-${a1(depression)}`, "°C")];
}

/** One exercise worked out step by step. */
function worked(kit: Kit, sheet: CorpusSheet, problem: Problem, at: number, proviso: Spot): void {
  const { solute, waterGrams, grams } = problem;
  const top = 4 + 13 * at;
  putRow(sheet, top, 0, [`${at + 1}.`, "Gegeben"]);
  const cells = given(sheet, top + 1, [
    ["Stoff", solute.de],
    ["m", grams, "g"],
    ["M", shown(solute.molarMass, "0.00"), "g/mol"],
    ["i", solute.particles, "Teilchen je Formeleinheit"],
    ["m(Wasser)", waterGrams, "g"],
    ["Kf", shown(1.86, "0.00"), "K·kg/mol"],
  ]);
  const [name, mass, molar, particles, water, constant] = cells as [
    ...[Spot, Spot, Spot, Spot, Spot, Spot],
  ];
  const answers = steps(sheet, top + 7, cells) as [Spot, Spot, Spot];
  const [moles, depression, freezingPoint] = answers;
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
}

/** Four exercises by hand, then the ice of the class. */
function byHand(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rechenbeispiele");
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "Gefrierpunkterniedrigung: vier Beispiele von Hand gerechnet");
  const text = `Gilt nur für verdünnte Lösungen; Abweichung vom Messwert höchstens ${tolerance} K.`;
  const proviso = put(sheet, 1, 0, text);
  list.forEach((each, at) => worked(kit, sheet, each, at, proviso));
  note(kit, sheet, 2, 0, "Zum Abschreiben ins Heft, Einheiten mitnehmen.");
  classIce(kit);
}

/** What the same teacher hands out. */
export const handouts: readonly Layout[] = [
  { name: "Physik, vier Beispiele Schritt für Schritt", language: "de", build: byHand },
];
