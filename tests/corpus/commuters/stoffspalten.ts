import {
  a1,
  addSheet,
  put,
  putRow,
  shown,
  span,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";

/** Rows of the table: quantity, its sign, the three solutes, the unit. */
const ROWS = [
  ["Stoff", undefined, undefined],
  ["Einwaage", "m", "g"],
  ["molare Masse", "M", "g/mol"],
  ["Stoffmenge", "n", "mol"],
  ["Teilchen pro Formeleinheit", "i", "ohne"],
  ["gelöste Teilchen", "n·i", "mol"],
] as const;

const TOP = 3;

/** One solute down its column. */
function solute(
  sheet: CorpusSheet,
  { de, molarMass, particles }: Dissolved,
  g: number,
  at: number,
) {
  const column = 2 + at;
  const cell = (row: number, content: Content): Spot => put(sheet, TOP + row, column, content);
  const [name, mass, molar] = [cell(0, de), cell(1, g), cell(2, shown(molarMass, "0.00"))];
  const moles = cell(3, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
  const count = cell(4, particles);
  const all = cell(5, shown(`=${a1(moles)}*${a1(count)}`, "0.0000"));
  return { name, mass, molar, moles, count, all };
}

/** The law in steps under the table; quantity, sign, number and unit. */
function law(kit: Kit, sheet: CorpusSheet, all: readonly Spot[], waterGrams: number) {
  let row = TOP + ROWS.length + 1;
  const step = (label: string, sign: string, content: Content, unit: string): Spot =>
    putRow(sheet, row++, 0, [label, sign, content, unit])[2]!;
  const water = step("Lösemittel Wasser", "m(W)", waterGrams, "g");
  const constant = step("kryoskopische Konstante", "K", shown(1.86, "0.00"), "K·kg/mol");
  const together = step("Teilchen zusammen", "Σ", shown(`=SUM(${span(all)})`, "0.0000"), "mol");
  kit.marked.sums.push({ spot: together, parts: all });
  const perKilo = `=${a1(together)}/${a1(water)}*1000`;
  const molality = step("Molalität der Teilchen", "b", shown(perKilo, "0.000"), "mol/kg");
  const product = `=${a1(constant)}*${a1(molality)}`;
  const depression = step("Gefrierpunktserniedrigung", "ΔT", shown(product, "0.00"), "K");
  const below = `=-${a1(depression)}`;
  const freezingPoint = step("Gefrierpunkt der Lösung", "ϑ", shown(below, "0.00"), "°C");
  return { water, constant, depression, freezingPoint, next: row + 1 };
}

/** Labels, signs and units of the table; gives the labels. */
const labelled = (sheet: CorpusSheet): Spot[] =>
  ROWS.map(([label, sign, unit], index) => {
    const [spot] = putRow(sheet, TOP + index, 0, [label, sign]);
    put(sheet, TOP + index, 5, unit);
    return spot!;
  });

/** One solution of three things. */
function worksheet(kit: Kit, title: string, tab: string): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, tab);
  put(sheet, 0, 0, title);
  const solutes = choose(random, 3);
  const waterGrams = random.pick([250, 500, 750]);
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams / 2));
  const labels = labelled(sheet);
  const columns = solutes.map((each, index) => solute(sheet, each, grams[index]!, index));
  const moles = columns.map(({ all }) => all);
  const amounts = columns.map((each) => each.moles);
  const { water, constant, depression, freezingPoint, next } = law(kit, sheet, moles, waterGrams);
  const gap = tolerated(idealGap(solutes, grams, waterGrams)).replace(".", ",");
  const words = `Ideal gerechnet. Die wirkliche Lösung weicht höchstens ${gap} K davon ab.`;
  const proviso = put(sheet, next, 0, words);
  marked.solutions.push({
    ...{ names: columns.map(({ name }) => name), grams: columns.map(({ mass }) => mass), moles },
    molarMasses: columns.map(({ molar }) => molar),
    particles: columns.map(({ count }) => count),
    ...{ counted: amounts, water, constant, depression, freezingPoint, proviso },
  });
  marked.formulaColumns.push({ spots: amounts, heading: labels[3]!, fixed: [] });
  marked.formulaColumns.push({ spots: moles, heading: labels[5]!, fixed: [] });
  note(kit, sheet, next + 2, 0, "Lösungsweg mit Einheiten ins Heft, Taschenrechner erlaubt.");
}

/** Two worksheets of one lesson. */
function pta(kit: Kit): void {
  worksheet(kit, "PTA-Schule, Galenik: Gefrierpunkt einer Mischlösung, Blatt A", "Blatt A");
  worksheet(kit, "PTA-Schule, Galenik: Gefrierpunkt einer Mischlösung, Blatt B", "Blatt B");
}

/** Somebody who teaches pharmacy assistants. */
export const stoffspalten: readonly Layout[] = [
  { name: "PTA-Schule, drei Stoffe in Spalten", language: "de", build: pta },
];
