import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Problem } from "../layouts/parts";

interface Sheet {
  readonly sheet: CorpusSheet;
  readonly constant: Spot;
  readonly proviso: Spot;
}

/** One exercise, given and worked out, one line below the other. */
function exercise(kit: Kit, { sheet, constant, proviso }: Sheet, given: Problem, index: number) {
  const { solute, grams, waterGrams } = given;
  const left = index % 2 === 0 ? 0 : 4;
  const top = 4 + 11 * Math.floor(index / 2);
  put(sheet, top, left, `Aufgabe ${index + 1}`);
  const line = (step: number, label: string, value: string | number, unit = "", format = "") => {
    const content = format === "" ? value : shown(value, format);
    return putRow(sheet, top + step, left, [label, content, unit === "" ? undefined : unit])[1]!;
  };
  const name = line(1, "gelöst wird", solute.de);
  const mass = line(2, "Masse", grams, "g");
  const molar = line(3, "molare Masse", solute.molarMass, "g/mol", "0.00");
  const particles = line(4, "zerfällt in Teilchen", solute.particles);
  const water = line(5, "Masse des Wassers", waterGrams, "g");
  const amount = `=${a1(mass)}/${a1(molar)}*${a1(particles)}`;
  const moles = line(6, "Stoffmenge der Teilchen", amount, "mol", "0.0000");
  const molal = `=${a1(moles)}/(${a1(water)}/1000)`;
  const molality = line(7, "Molalität der Teilchen", molal, "mol/kg", "0.000");
  const drop = `=${fixed(constant)}*${a1(molality)}`;
  const depression = line(8, "Erniedrigung", drop, "K", "0.00");
  const freezingPoint = line(9, "Gefrierpunkt", `=-${a1(depression)}`, "°C", "0.00");
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
}

const TALLY = ["Aufgabe", "Punkte möglich", "Punkte erreicht", "Anteil"];

/** What the pupil got for them. */
function tally(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Punkte");
  put(sheet, 0, 0, "Probearbeit, Auswertung");
  const heads = putRow(sheet, 2, 0, TALLY);
  const spots = Array.from({ length: 4 }, (_, index) => {
    const possible = random.whole(6, 10);
    const cells = [`Aufgabe ${index + 1}`, possible, possible - random.whole(0, 4)];
    const [, most, got] = putRow(sheet, 3 + index, 0, cells);
    return put(sheet, 3 + index, 3, shown(`=${a1(got!)}/${a1(most!)}`, "0%"));
  });
  marked.formulaColumns.push({ spots, heading: heads[3]!, fixed: [] });
  note(kit, sheet, 8, 0, "Einheiten üben, sonst sitzt es.");
}

/** A student who gives private lessons: model answers. */
function nachhilfe(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Musterlösungen");
  put(sheet, 0, 0, "Wann gefriert es? Musterlösungen zur Probearbeit");
  const kf = ["Kf von Wasser in K·kg/mol", shown(1.86, "0.00")];
  const constant = putRow(sheet, 1, 0, kf)[1]!;
  const { list, tolerance } = problems(kit, 4);
  const text = `Alles ideal gerechnet; die Tabelle im Buch weicht um höchstens ${tolerance} K ab.`;
  const proviso = put(sheet, 2, 0, text);
  list.forEach((given, index) => exercise(kit, { sheet, constant, proviso }, given, index));
  tally(kit);
}

export const nachhilfen: readonly Layout[] = [
  { name: "Nachhilfe Chemie, vier Musterlösungen", language: "de", build: nachhilfe },
];
