import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { problems, say, type Problem, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { perHundred } from "../recipes";
import { block, markWorked, table, voice, type Worked } from "./words";

/** One task: what is given at the left, what follows at the right. */
function aufgabe(
  sheet: CorpusSheet,
  { solute, grams, waterGrams }: Problem,
  index: number,
): Worked {
  const top = 3 + 8 * index;
  putRow(sheet, top, 0, [`Aufgabe ${index + 1}`, "gesucht: Erstarrungspunkt"]);
  const [name, mass, water, molar, particles, constant] = table(
    sheet,
    { row: top + 1, column: 0 },
    [
      ["Gelöst wird", solute.de],
      ["Masse des Stoffs", grams, "g"],
      ["Masse des Wassers", waterGrams, "g"],
      ["molare Masse", shown(solute.molarMass, "0.00"), "g/mol"],
      ["Teilchen je Formeleinheit", solute.particles],
      ["kryoskopische Konstante (Wasser)", shown(1.86, "0.00"), "K·kg/mol"],
    ],
  ).map((cells) => cells[1]!) as [Spot, Spot, Spot, Spot, Spot, Spot];
  put(sheet, top, 5, `Lösung zu ${index + 1}`);
  const line = (row: number, label: string, formula: string, unit: string, format: string) =>
    putRow(sheet, top + row, 5, [label, shown(`=${formula}`, format), unit])[1]!;
  const moles = line(1, "Stoffmenge", `${a1(mass)}/${a1(molar)}`, "mol", "0.0000");
  const molal = line(2, "Molalität", `${a1(moles)}*1000/${a1(water)}`, "mol/kg", "0.000");
  const law = `${a1(constant)}*${a1(molal)}*${a1(particles)}`;
  const depression = line(3, "Erniedrigung", law, "K", "0.00");
  const point = line(4, "Erstarrungspunkt", `0-${a1(depression)}`, "°C", "0.00");
  return { name, mass, water, molar, particles, constant, moles, depression, point };
}

const SAID: readonly Said[] = [
  { label: "Erniedrigung", inCell: "K", states: "depression", as: "typed", decimals: 2 },
  { label: "Erstarrungsbeginn", inCell: "°C", states: "freezing point", as: "formula" },
  {
    ...{ label: "Eis in der Masse bei −15 °C", inCell: "%", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -15, decimals: 0 },
  },
  { label: "Wasser in 100 g", inCell: "g", states: "water", as: "typed", decimals: 1 },
];

const VOICE = voice(
  "Allergenhinweis:",
  "Wegen des Honigs nicht für Kinder unter 12 Monaten.",
  "Wegen des Alkohols nicht für Kinder, nicht in der Schwangerschaft, nicht vor dem Fahren.",
  "Wegen ganzer Nüsse Erstickungsgefahr, nicht für Kinder unter 5 Jahren.",
  "Wegen rohen Eigelbs auf 71 °C erhitzen oder pasteurisiertes Eigelb nehmen.",
);

/** The last task is about an ice that is no ideal solution. */
function speiseeis(kit: Kit, sheet: CorpusSheet, top: number): void {
  const made = called(stillMet(perHundred(kit.make(1)[0]!)), { Zucker: "Haushaltszucker" });
  put(sheet, top, 0, `Aufgabe 4 (Anwendung): ${made.title}`);
  put(sheet, top, 5, "Lösung zu 4");
  const { recipe, end } = block(
    kit,
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Komponente", "Massenanteil w"],
      cells: (item, grams) => [item, shown(inUnit(grams, "fraction"), "0.000")],
      ...{ name: 0, amount: 1, unit: "fraction", format: "0.000", word: "Σ w" },
    },
  );
  const next = say(sheet, recipe, { row: top + 1, column: 5 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Soll" });
  tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
  note(kit, sheet, end + 3, 0, "Besprechung am Donnerstag, Hörsaal 3; Abgabe zu zweit erlaubt.");
}

/** An exercise sheet with its solutions at the right. */
function uebungsblatt(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Blatt 6");
  put(sheet, 0, 0, "Physikalische Chemie für Lehramt, Blatt 6: kolligative Eigenschaften");
  const { list, tolerance } = problems(kit, 3);
  const solved = list.map((each, index) => aufgabe(sheet, each, index));
  const text = `Zu 1 bis 3: ideal verdünnt gerechnet, der Fehler bleibt unter ${tolerance} K.`;
  const proviso = put(sheet, 27, 0, text);
  solved.forEach((each) => markWorked(kit, each, proviso));
  speiseeis(kit, sheet, 29);
}

/** A university's exercises for teachers to be. */
export const uebungsblaetter: readonly Layout[] = [
  {
    name: "Physikalische Chemie, Übungsblatt mit Lösungen rechts und Speiseeis",
    ...{ language: "de", build: uebungsblatt },
  },
];
