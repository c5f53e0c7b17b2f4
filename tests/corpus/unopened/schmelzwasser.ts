import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { freezesAt, problems, type Problem } from "../layouts/parts";
import { temperatures } from "../strollers/words";
import { single } from "./words";

const GROUPS = ["Gruppe Blau", "Gruppe Gelb", "Gruppe Grün", "Gruppe Rot"];

type Known = (problem: Problem) => string | number | ReturnType<typeof shown>;

const GIVEN: readonly (readonly [label: string, unit: string | undefined, known: Known])[] = [
  ["gelöster Stoff", undefined, ({ solute }) => solute.de],
  ["abgewogen", "g", ({ grams }) => grams],
  ["Wasser aus dem Messbecher", "g", ({ waterGrams }) => waterGrams],
  ["molare Masse", "g/mol", ({ solute }) => shown(solute.molarMass, "0.00")],
  ["Teilchen pro Formeleinheit", undefined, ({ solute }) => solute.particles],
];

/** A line of the table across the groups, its unit after the last. */
function across(
  sheet: CorpusSheet,
  row: number,
  [label, unit]: readonly [string, string | undefined],
  content: (column: number) => Parameters<typeof put>[3],
): { readonly heading: Spot; readonly spots: Spot[] } {
  const heading = put(sheet, row, 0, label);
  const spots = GROUPS.map((_, index) => put(sheet, row, 1 + index, content(1 + index)));
  if (unit !== undefined) put(sheet, row, 1 + GROUPS.length, unit);
  return { heading, spots };
}

/** What the groups work out, line under line. */
function answers(kit: Kit, sheet: CorpusSheet, top: number, constant: Spot) {
  const at = (row: number, column: number) => a1({ sheet: sheet.name, row, column });
  const work = (
    row: number,
    words: readonly [string, string],
    formula: (column: number) => string,
    format: string,
    reads: readonly Spot[] = [],
  ): Spot[] => {
    const line = across(sheet, row, words, (column) => shown(`=${formula(column)}`, format));
    kit.marked.formulaColumns.push({ ...line, fixed: reads });
    return line.spots;
  };
  const molesOf = (column: number) => `${at(6, column)}/${at(8, column)}`;
  const moles = work(top, ["Stoffmenge n", "mol"], molesOf, "0.0000");
  const perKilo = (column: number) => `${at(top, column)}/(${at(7, column)}/1000)`;
  work(top + 1, ["Molalität b", "mol/kg"], perKilo, "0.000");
  const law = (column: number) => `${fixed(constant)}*${at(9, column)}*${at(top + 1, column)}`;
  const depression = work(top + 2, ["ΔT berechnet", "K"], law, "0.00", [constant]);
  const below = (column: number) => `0-${at(top + 2, column)}`;
  const freezingPoint = work(top + 3, ["Gefrierpunkt berechnet", "°C"], below, "0.00");
  return { moles, depression, freezingPoint };
}

/** How a beaker cooled, minute by minute. */
function cooling(kit: Kit, sheet: CorpusSheet, row: number): void {
  put(sheet, row, 0, "Abkühlkurve am Lehrertisch (Kältebad aus Eis und Salz)");
  const heads = putRow(sheet, row + 1, 0, ["Minute", "Leitungswasser in °C", "Kältebad in °C"]);
  const minutes = [0, 2, 4, 6, 8, 10, 12];
  const start = kit.random.whole(17, 20);
  const rows = minutes.map((minute, index) =>
    putRow(sheet, row + 2 + index, 0, [
      minute,
      shown(Math.round(10 * start * 0.62 ** index) / 10, "0.0"),
      shown(kit.random.whole(-34, -28) / 2, "0.0"),
    ]),
  );
  [1, 2].forEach((at) =>
    temperatures(
      kit,
      heads[at]!,
      rows.map((cells) => cells[at]!),
    ),
  );
}

/** Four groups beside each other, the units at the right. */
function schmelzwasser(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Protokoll");
  const { list, tolerance } = problems(kit, 4);
  putRow(sheet, 0, 0, ["Physik 9c", "Versuch 6: Wann gefriert es?", undefined, "Herr R., Saal 2"]);
  const words = ["kryoskopische Konstante von Wasser", shown(1.86, "0.00"), "K·kg/mol"];
  const constant = putRow(sheet, 2, 0, words)[1]!;
  putRow(sheet, 4, 0, [undefined, ...GROUPS, "Einheit"]);
  const known = GIVEN.map(([label, unit, of], index) =>
    across(sheet, 5 + index, [label, unit], (column) => of(list[column - 1]!)),
  );
  const [name, grams, water, molar, particles] = known.map(({ spots }) => spots);
  const { moles, depression, freezingPoint } = answers(kit, sheet, 11, constant);
  const read = across(sheet, 15, ["am Thermometer abgelesen", "°C"], (column) => {
    const { solute, waterGrams, grams: mass } = list[column - 1]!;
    return shown(freezesAt(["water", solute.en], [waterGrams, mass]), "0.0");
  });
  temperatures(kit, read.heading, read.spots);
  const text = `Die Formel gilt für ideale Lösungen. Unsere Werte liegen höchstens ${tolerance} K daneben.`;
  const proviso = put(sheet, 17, 0, text);
  list.forEach((_, index) => {
    const [one, mass, molarMass, count] = [name, grams, molar, particles].map(
      (all) => all![index]!,
    );
    const cells = { name: one!, grams: mass!, molar: molarMass!, particles: count! };
    const own = { water: water![index]!, constant, depression: depression[index]! };
    const rest = { ...own, freezingPoint: freezingPoint[index]!, proviso };
    kit.marked.solutions.push(single({ ...cells, moles: moles[index]! }, rest));
  });
  cooling(kit, sheet, 20);
  note(kit, sheet, 30, 0, "Nächste Stunde Heft mit Abkühlkurve einsammeln.");
}

/** A physics teacher's protocol. */
export const schmelzwaesser: readonly Layout[] = [
  {
    name: "Physik 9c, Protokoll mit vier Gruppen nebeneinander",
    language: "de",
    build: schmelzwasser,
  },
];
