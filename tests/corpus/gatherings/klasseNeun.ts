import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { oneOf } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { say, type Problem } from "../layouts/parts";
import { reading } from "../scholars/words";
import { isAlcoholic } from "../strollers/words";
import { problemsOf, readings, usual, weighed } from "./words";

const VOICE: Voice = {
  lead: "Im Elternbrief nennen:",
  honey: "Mit Honig, für Babys unter 12 Monaten verboten.",
  alcohol: "Mit Alkohol, nichts für Kinder, Schwangere oder wer fährt.",
  nuts: "Ganze Nüsse, unter 5 Jahren Erstickungsgefahr.",
  egg: "Eigelb ist roh: auf 71 °C erhitzen oder pasteurisiertes kaufen.",
};

const LABELS = [
  ...["Im Glas", "davon abgewogen (g)", "Leitungswasser (g)", "1 mol wiegt (g/mol)"],
  ...["Teilchen je Formeleinheit", "Kf (K·kg/mol)", "Stoffmenge der Teilchen (mol)"],
  ...["Teilchen je kg Wasser (mol/kg)", "Gefrierpunkt sinkt um (K)", "Gefrierpunkt danach (°C)"],
  "Thermometer zeigte (°C)",
];

/** Ein Glas in seiner Spalte. */
function glass(sheet: CorpusSheet, problem: Problem, column: number) {
  const { solute, grams, waterGrams } = problem;
  const down = (step: number, content: string | number | ReturnType<typeof shown>): Spot =>
    put(sheet, 3 + step, column, content);
  const name = down(0, solute.de);
  const mass = down(1, grams);
  const water = down(2, waterGrams);
  const molar = down(3, shown(solute.molarMass, "0.00"));
  const particles = down(4, solute.particles);
  const constant = down(5, shown(1.86, "0.00"));
  const amount = `=${a1(mass)}/${a1(molar)}*${a1(particles)}`;
  const moles = down(6, shown(amount, "0.0000"));
  const molality = down(7, shown(`=${a1(moles)}/${a1(water)}*1000`, "0.000"));
  const depression = down(8, shown(`=${a1(constant)}*${a1(molality)}`, "0.00"));
  const freezingPoint = down(9, shown(`=-${a1(depression)}`, "0.00"));
  down(10, shown(reading(problem), "0.0"));
  const solution = {
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint },
  };
  return { solution, worked: [moles, molality, depression, freezingPoint] };
}

/** Vier Gläser nebeneinander; gibt die nächste freie Zeile. */
function glasses(kit: Kit, sheet: CorpusSheet): number {
  const names = ["sodium chloride", "sodium bicarbonate", "glucose monohydrate", "sucrose"];
  const solutes = names.map(usual);
  const { list, tolerance } = problemsOf(kit, solutes, [100, 200, 300]);
  LABELS.forEach((label, index) => put(sheet, 3 + index, 0, label));
  list.forEach((_, index) => put(sheet, 2, 1 + index, `Tisch ${index + 1}`));
  const columns = list.map((problem, index) => glass(sheet, problem, 1 + index));
  const row = 4 + LABELS.length;
  const text = `Formel für ideale Lösungen; auf ${tolerance} K stimmt sie bei unseren Gläsern.`;
  const proviso = put(sheet, row, 0, text);
  for (const { solution } of columns) kit.marked.solutions.push({ ...solution, proviso });
  [0, 1, 2, 3].forEach((index) => {
    const spots = columns.map(({ worked }) => worked[index]!);
    const heading = { sheet: sheet.name, row: 9 + index, column: 0 };
    kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
  });
  const measured = list.map((_, index) => ({ sheet: sheet.name, row: 13, column: 1 + index }));
  const heading = { sheet: sheet.name, row: 13, column: 0 };
  kit.marked.numberColumns.push({ spots: measured, heading, total: null, kind: "temperature" });
  return row + 2;
}

/** Das Eis der Klasse unter den Gläsern. */
function classIce(kit: Kit, sheet: CorpusSheet, row: number): void {
  const made = called(
    oneOf(kit, (each) => !isAlcoholic(each)),
    { Zucker: "Haushaltszucker", Wasser: "Leitungswasser", Salz: "Kochsalz" },
  );
  put(sheet, row, 0, `Unser Eis am Projekttag: ${made.title}`);
  const { recipe, end } = weighed(
    kit,
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["Das muss hinein", "Gramm", "besorgt"],
      cells: (name, grams, index) => [name, grams, index % 3 === 0 ? "Schule" : "Eltern"],
      ...{ name: 0, amount: 1, unit: "g", total: "Wiegt fertig" },
    },
  );
  const next = say(sheet, recipe, { row: row + 1, column: 4 }, [
    { label: "Gefriert ab", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Wasser darin", inCell: "g", states: "water", as: "formula", format: "0" },
    {
      ...{ label: "Vom Wasser gefroren bei −18 °C", inCell: "%", states: "ice of water" },
      ...{ as: "typed", temperatureC: -18, decimals: 0 },
    },
    { label: "Gelöst darin", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Soll werden" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
  putRow(sheet, end + 4, 0, ["Uhrzeit", "Schulgefrierschrank (°C)"]);
  ["8:00", "10:00", "12:00", "14:00"].forEach((time, index) =>
    put(sheet, end + 5 + index, 0, time),
  );
  const values = [0, 1, 2, 3].map(() => -kit.random.whole(16, 19));
  readings(kit, sheet, { sheet: sheet.name, row: end + 4, column: 1 }, values);
}

/** Projekttag einer neunten Klasse, alles auf einem Blatt. */
function klasseNeun(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Projekttag");
  put(sheet, 0, 0, "9c Projekttag Eis – erst rechnen, dann rühren");
  const row = glasses(kit, sheet);
  classIce(kit, sheet, row);
  note(kit, sheet, 1, 0, "Jeder Tisch füllt nur seine Spalte aus.");
}

/** Ein Projekttag. */
export const projekttage: readonly Layout[] = [
  { name: "9c Projekttag Eis, ein Tisch je Spalte", language: "de", build: klasseNeun },
];
