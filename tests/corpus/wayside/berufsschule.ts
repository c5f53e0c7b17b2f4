import { a1, addSheet, calledFrom, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { absolute, freezesAt, problems, type Problem } from "../layouts/parts";
import { temperatures } from "../strollers/words";
import { little } from "./words";

/** The numbers that stay the same, on a sheet of their own; gives the constant of water. */
function constants(kit: Kit): Spot {
  const sheet = addSheet(kit.marked.book, "Konstanten");
  put(sheet, 0, 0, "nicht ändern");
  const spots = putRow(sheet, 2, 0, ["Wasser, kryoskopisch", shown(1.86, "0.00"), "K·kg/mol"]);
  putRow(sheet, 3, 0, ["Dichte Wasser bei 20 °C", shown(0.998, "0.000"), "g/ml"]);
  putRow(sheet, 4, 0, ["Schmelzwärme Eis", 334, "J/g"]);
  return spots[1]!;
}

/** The exercises as handed out; answers stay blank there. */
function exercises(sheet: CorpusSheet, list: readonly Problem[]) {
  put(sheet, 0, 1, "Konditoren 2. Lehrjahr: Läuterzucker, Salzlake & Co.");
  put(sheet, 1, 1, "Rechne aus, wann der Topf anfängt zu frieren. Taschenrechner erlaubt.");
  return little(
    sheet,
    { row: 3, column: 0 },
    ["Aufg.", "Wasser im Topf (g)", "dazu (g)", "Stoff", "Gefrierpunkt (°C)"],
    list.map(({ solute, waterGrams, grams }, index) => [
      ...[`${index + 1})`, waterGrams, grams, solute.de, "........"],
    ]),
  ).rows;
}

const HEADS = [
  ...["Aufg.", "M [g/mol]", "Teilchen", "Mole gelöst", "Mole je kg Wasser"],
  ...["Absenkung [K]", "Gefrierpunkt [°C]", "Vorführung [°C]", "Pkt."],
];

/** The key: each row reads the exercise and the constant on the other sheets. */
function answerRow(
  sheet: CorpusSheet,
  { solute, waterGrams, grams }: Problem,
  exercise: readonly Spot[],
  row: number,
  constant: Spot,
) {
  const [number, water, mass] = exercise as [Spot, Spot, Spot];
  const from = (spot: Spot) => calledFrom({ ...spot, sheet: sheet.name }, spot);
  const [, molar, particles] = putRow(sheet, row, 0, [
    ...[`=${from(number)}`, shown(solute.molarMass, "0.00"), solute.particles],
  ]) as [Spot, Spot, Spot];
  const moles = put(sheet, row, 3, shown(`=${from(mass)}/${a1(molar)}`, "0.0000"));
  const molality = put(sheet, row, 4, shown(`=${a1(moles)}/${from(water)}*1000`, "0.000"));
  const law = `=${absolute(from(constant))}*${a1(particles)}*${a1(molality)}`;
  const depression = put(sheet, row, 5, shown(law, "0.00"));
  const freezingPoint = put(sheet, row, 6, shown(`=0-${a1(depression)}`, "0.00"));
  const real = freezesAt(["water", solute.en], [waterGrams, grams]);
  const [shownThere] = putRow(sheet, row, 7, [shown(real, "0.0"), 4]);
  const named = { names: [exercise[3]!], grams: [mass], molarMasses: [molar] };
  const answers = { moles: [moles], water, constant, depression, freezingPoint };
  const solved = { ...named, particles: [particles], ...answers };
  return { solved, columns: [moles, molality, depression, freezingPoint], shownThere: shownThere! };
}

/** Exercises, their key and the constants, each on a sheet. */
function berufsschule(kit: Kit): void {
  const { list, tolerance } = problems(kit, 5);
  const asked = exercises(addSheet(kit.marked.book, "Aufgaben"), list);
  const sheet = addSheet(kit.marked.book, "LÖSUNG Lehrer");
  const constant = constants(kit);
  const heads = putRow(sheet, 2, 0, HEADS);
  const text = `Ideal gerechnet! In der Vorführung höchstens ${tolerance} K daneben.`;
  const proviso = put(sheet, 0, 4, text);
  const rows = list.map((each, index) =>
    answerRow(sheet, each, asked[index]!, 3 + index, constant),
  );
  for (const { solved } of rows) kit.marked.solutions.push({ ...solved, proviso });
  [[], [], [constant], []].forEach((fixed, index) => {
    const spots = rows.map(({ columns }) => columns[index]!);
    kit.marked.formulaColumns.push({ spots, heading: heads[3 + index]!, fixed });
  });
  temperatures(
    kit,
    heads[7]!,
    rows.map(({ shownThere }) => shownThere),
  );
  putRow(sheet, 9, 7, ["zusammen", "=SUM(I4:I8)"]);
  const parts = rows.map(({ shownThere }) => ({ ...shownThere, column: 8 }));
  kit.marked.sums.push({ spot: { sheet: sheet.name, row: 9, column: 8 }, parts });
  note(kit, sheet, 11, 0, "Note: ab 18 Pkt. eins, ab 15 zwei, ab 12 drei, drunter reden wir.");
}

/** Sheets of a vocational school. */
export const berufsschulen: readonly Layout[] = [
  {
    name: "Berufsschule Konditoren, Aufgaben und Lösung getrennt",
    language: "de",
    build: berufsschule,
  },
];
