import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Problem } from "../layouts/parts";
import { columnsOf } from "./worte";

const ASKED = ["Nr.", "Stoff", "Masse in g", "Wasser in g", "ΔT in K", "Gefrierpunkt in °C"];
const SOLVED = [
  ...["Nr.", "M in g/mol", "Teilchenzahl i", "n in mol", "b in mol/kg"],
  ...["ΔT in K", "Gefrierpunkt in °C"],
];

/** What the class gets: the last columns are left to be filled in with a pencil. */
function questions(sheet: CorpusSheet, list: readonly Problem[], top: number): Spot[][] {
  putRow(sheet, top, 0, ASKED);
  const rows = list.map(({ solute, grams, waterGrams }, index) => {
    const cells = [`${"abcde"[index]!})`, solute.de, grams, waterGrams, "______", "______"];
    return putRow(sheet, top + 1 + index, 0, cells);
  });
  return columnsOf(rows, 1, 2, 3);
}

/** One line of the solution; gives its cells. */
function solved(
  sheet: CorpusSheet,
  row: number,
  problem: Problem,
  { index, constant, mass, water }: Record<"constant" | "mass" | "water", Spot> & { index: number },
): Spot[] {
  const { molarMass, particles } = problem.solute;
  const [, molar, count] = putRow(sheet, row, 0, [
    ...[`${"abcde"[index]!})`, shown(molarMass, "0.00"), particles],
  ]) as [Spot, Spot, Spot];
  const moles = put(sheet, row, 3, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
  const perKg = put(sheet, row, 4, shown(`=${a1(moles)}/${a1(water)}*1000`, "0.000"));
  const law = `=${a1(count)}*${fixed(constant)}*${a1(perKg)}`;
  const depression = put(sheet, row, 5, shown(law, "0.00"));
  const point = put(sheet, row, 6, shown(`=0-${a1(depression)}`, "0.00"));
  return [molar, count, moles, perKg, depression, point];
}

interface Given {
  readonly list: readonly Problem[];
  readonly columns: readonly Spot[][];
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** The part below the fold, for the teacher. */
function answers(kit: Kit, sheet: CorpusSheet, top: number, given: Given): void {
  const { list, columns, constant, proviso } = given;
  const [names, grams, waters] = columns as [Spot[], Spot[], Spot[]];
  const heads = putRow(sheet, top, 0, SOLVED);
  const rows = list.map((problem, index) => {
    const around = { constant, mass: grams[index]!, water: waters[index]! };
    return solved(sheet, top + 1 + index, problem, { ...around, index });
  });
  rows.forEach(([molar, particles, counted, moles, depression, freezingPoint], index) => {
    kit.marked.solutions.push({
      ...{ names: [names[index]!], grams: [grams[index]!], water: waters[index]! },
      ...{ molarMasses: [molar!], particles: [particles!], moles: [moles!], counted: [counted!] },
      ...{ depression: depression!, freezingPoint: freezingPoint!, constant, proviso },
    });
  });
  for (const at of [2, 3, 4, 5]) {
    const [spots] = columnsOf(rows, at) as [Spot[]];
    const reads = at === 4 ? [constant] : [];
    kit.marked.formulaColumns.push({ spots, heading: heads[1 + at]!, fixed: reads });
  }
}

/** A work sheet with its solution under the fold. */
function worksheet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "AB 4");
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "Ernährung und Haushalt, Klasse 10: Warum gefrieren Lösungen erst unter 0 °C?");
  putRow(sheet, 1, 0, ["Name:", "______________", undefined, "Datum:", "________"]);
  putRow(sheet, 3, 0, ["Merke: ΔT = i · Kf · b, der Gefrierpunkt liegt um ΔT unter 0 °C."]);
  const constant = putRow(sheet, 4, 0, [...["Kf von Wasser in K·kg/mol", shown(1.86, "0.00")]])[1]!;
  const columns = questions(sheet, list, 6);
  put(sheet, 12, 0, "······ hier nach hinten falten ······");
  put(sheet, 13, 0, "Lösungen");
  const words = `Die Formel gilt für dünne Lösungen, hier auf ${tolerance} K genau.`;
  const proviso = put(sheet, 20, 0, words);
  answers(kit, sheet, 14, { list, columns, constant, proviso });
  note(kit, sheet, 21, 0, "Ein Punkt je richtiger Zahl mit Einheit, Rechenweg extra.");
}

/** A home economics teacher's work sheet. */
export const arbeitsblaetter: readonly Layout[] = [
  {
    name: "Hauswirtschaft, Arbeitsblatt mit Lösung unter dem Falz",
    language: "de",
    build: worksheet,
  },
];
