import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Problem } from "../layouts/parts";
import { trulyFreezes } from "./words";

const STORIES = [
  "Lisa setzt eine Lösung für die Tauchkühlung an.",
  "Im Kühlhaus fehlt Kühlmittel, Herr B. rührt nach.",
  "Für die Probe im Kältelabor wird neu angerührt.",
  "Ein Eimer bleibt über Nacht im Froster.",
];

/** A row of a way of calculating: sign, what it means, number, unit. */
function line(
  sheet: CorpusSheet,
  [row, left]: readonly [number, number],
  [sign, meaning, unit]: readonly [string | undefined, string, string | undefined],
  content: number | string,
  format?: string,
): Spot {
  putRow(sheet, row, left, [sign, meaning]);
  put(sheet, row, left + 3, unit);
  return put(sheet, row, left + 2, format === undefined ? content : shown(content, format));
}

/** One exercise: given, wanted and the way, one block. */
function exercise(
  kit: Kit,
  sheet: CorpusSheet,
  problem: Problem,
  at: readonly [row: number, left: number, number: number],
  gap: string,
): void {
  const { solute, grams, waterGrams } = problem;
  const [top, left, number] = at;
  put(sheet, top, left, `${number}. ${STORIES[number - 1]}`);
  put(sheet, top + 1, left, "geg.");
  const name = line(sheet, [top + 2, left], [undefined, "Stoff", undefined], solute.de);
  const mass = line(sheet, [top + 3, left], ["m", "Einwaage", "g"], grams);
  const water = line(sheet, [top + 4, left], ["mW", "Wasser", "g"], waterGrams);
  const molar = line(
    sheet,
    [top + 5, left],
    ["M", "molare Masse", "g/mol"],
    solute.molarMass,
    "0.00",
  );
  const words = ["i", "Teilchenzahl", undefined] as const;
  const particles = line(sheet, [top + 6, left], words, solute.particles);
  const kf = ["Kf", "kryoskopische Konstante Wasser", "K·kg/mol"] as const;
  const constant = line(sheet, [top + 7, left], kf, 1.86, "0.00");
  put(sheet, top + 8, left, "ges. ϑ");
  const step = (row: number, label: readonly [string, string, string], formula: string) =>
    line(sheet, [top + row, left], label, `=${formula}`, "0.000");
  const moles = step(9, ["n", "m : M", "mol"], `${a1(mass)}/${a1(molar)}`);
  const molality = step(10, ["b", "n : mW · 1000", "mol/kg"], `${a1(moles)}/${a1(water)}*1000`);
  const law = `${a1(constant)}*${a1(molality)}*${a1(particles)}`;
  const depression = step(11, ["ΔT", "Kf · b · i", "K"], law);
  const freezingPoint = step(12, ["ϑ", "0 °C − ΔT", "°C"], `0-${a1(depression)}`);
  const text = `Ideales Gesetz, hier auf ${gap} K genau.`;
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint },
    proviso: put(sheet, top + 13, left, text),
  });
}

/** What the freezer showed for each exercise, collected for the blackboard. */
function blackboard(kit: Kit, sheet: CorpusSheet, list: readonly Problem[]): void {
  const row = 34;
  put(sheet, row - 1, 0, "Zur Kontrolle im Labor gemessen");
  const heads = putRow(sheet, row, 0, ["Nr.", "Stoff", "gefriert bei °C", "Raum", "am"]);
  const spots = list.map((each, index) => {
    const read = shown(trulyFreezes(each), "0.0");
    const day = `${3 + 7 * index}.3.`;
    const cells = [index + 1, each.solute.de, read, kit.random.pick(["L1", "L2"]), day];
    return putRow(sheet, row + 1 + index, 0, cells)[2]!;
  });
  kit.marked.numberColumns.push({ spots, heading: heads[2]!, total: null, kind: "temperature" });
}

/** Four exercises, two beside two. */
function sheetOfFour(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "LF 7 Lösungen");
  put(sheet, 0, 0, "BS II, Mechatroniker für Kältetechnik, LF 7: Kühlmittel, Blatt mit Lösungsweg");
  const { list, tolerance } = problems(kit, 4);
  list.forEach((problem, index) => {
    const [top, left] = [3 + 15 * Math.floor(index / 2), 5 * (index % 2)];
    exercise(kit, sheet, problem, [top, left, index + 1], tolerance);
  });
  blackboard(kit, sheet, list);
  note(kit, sheet, 40, 0, "Nr. 3 erst nach der Pause austeilen.");
}

/** Worked exercises of a vocational school. */
export const rechenwege: readonly Layout[] = [
  { name: "Berufsschule Kälte, vier Rechenwege nebeneinander", language: "de", build: sheetOfFour },
];
