import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { freezesAt, sumOf } from "../layouts/parts";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { given } from "../lodgers/words";
import { temperatures } from "../strollers/words";
import { inColumn, sideTable, under, worked } from "./words";

const FORMULAS: Readonly<Record<string, string>> = {
  sucrose: "C12H22O11",
  "sodium chloride": "NaCl",
  fructose: "C6H12O6",
  "glucose monohydrate": "C6H12O6·H2O",
  "potassium chloride": "KCl",
  "sodium bicarbonate": "NaHCO3",
};

/** The sheet to look things up in; gives the cells of molar masses and particles. */
function nachschlagen(kit: Kit, solutes: readonly Dissolved[]): readonly (readonly Spot[])[] {
  const sheet = addSheet(kit.marked.book, "Stoffdaten");
  const heads = ["Formel", "Name", "M [g/mol]", "Zahl der Teilchen", "Gefäß im Schrank"];
  putRow(sheet, 0, 0, heads);
  return solutes.map(({ en, de, molarMass, particles }, index) => {
    const names = [FORMULAS[en], de];
    const shelf = `Fach ${kit.random.whole(1, 9)}`;
    const cells = [...names, shown(molarMass, "0.00"), particles, shelf];
    return putRow(sheet, 1 + index, 0, cells).slice(2, 4);
  });
}

const HEADS = ["gelöst wird", "Einwaage [g]", "n [mol]", "n mal Teilchen [mol]"];

/** A glass in which all of them are dissolved. */
function glas(
  kit: Kit,
  sheet: CorpusSheet,
  solutes: readonly Dissolved[],
  grams: readonly number[],
) {
  const heads = putRow(sheet, 5, 0, HEADS);
  const rows = solutes.map((_, index) => 6 + index);
  const [names, masses] = [0, 1].map((column) =>
    rows.map((row, index) =>
      put(sheet, row, column, column === 0 ? solutes[index]!.de : grams[index]),
    ),
  ) as [Spot[], Spot[]];
  const data = (column: number) => (row: number) => `Stoffdaten!${inColumn(column)(row - 5)}`;
  const [mass, amount] = [1, 2].map(inColumn);
  const counted = worked(kit, sheet, heads[2]!, rows, {
    ...{ formula: (row) => `${mass!(row)}/${data(2)(row)}`, format: "0.0000" },
  });
  const moles = worked(kit, sheet, heads[3]!, rows, {
    ...{ formula: (row) => `${amount!(row)}*${data(3)(row)}`, format: "0.0000" },
  });
  const end = 6 + rows.length;
  put(sheet, end, 0, "Summe");
  sumOf(kit, sheet, { row: end, column: 1 }, masses);
  const all = sumOf(kit, sheet, { row: end, column: 3 }, moles, "0.0000");
  return { names, grams: masses, counted, moles, all, end };
}

/** What the thermometer said every two minutes until the glass stood at its freezing point. */
function verlauf(kit: Kit, sheet: CorpusSheet, pointC: number): void {
  const shape = [8.4, 4.9, 2.2, 0.3, pointC - 0.9, pointC, pointC];
  const lines = shape.map((celsius, at) => [2 * at, shown(Number(celsius.toFixed(1)), "0.0")]);
  const heads = sideTable(sheet, [5, 5], ["Zeit [min]", "Temperatur [°C]"], lines);
  temperatures(kit, heads[1]!, under(heads[1]!, lines.length));
}

/** A sheet to look things up in and one that reads it. */
function stoffdaten(kit: Kit): void {
  const { random, marked } = kit;
  const solutes = choose(random, 4, dissolved);
  const cells = nachschlagen(kit, solutes);
  const sheet = addSheet(marked.book, "Versuch");
  put(sheet, 0, 0, "Ein Glas, vier gelöste Stoffe: wann wird es zu Eis?");
  const waterGrams = random.pick([500, 800, 1000]);
  const grams = solutes.map((each) =>
    Math.max(1, Math.round(gramsOf(random, each, waterGrams) / 3)),
  );
  const water = given(kit, sheet, [2, 0], ["Wasser im Glas", "g", waterGrams]);
  const constant = putRow(sheet, 3, 0, ["Kf Wasser [K·kg/mol]", shown(1.86, "0.00")])[1]!;
  const { all, end, ...marks } = glas(kit, sheet, solutes, grams);
  const law = `=${fixed(constant)}*${a1(all)}*1000/${a1(water)}`;
  const at = (row: number, label: string, formula: string) =>
    putRow(sheet, end + row, 0, [label, shown(formula, "0.00")])[1]!;
  const depression = at(2, "Erniedrigung [K]", law);
  const freezingPoint = at(3, "Gefrierpunkt [°C]", `=-${a1(depression)}`);
  const gap = tolerated(idealGap(solutes, grams, waterGrams)).replace(".", ",");
  const text = `Das Gesetz für ideale Lösungen stimmt hier auf ${gap} K.`;
  const proviso = put(sheet, end + 5, 0, text);
  const [molarMasses, particles] = [0, 1].map((column) => cells.map((row) => row[column]!));
  marked.solutions.push({
    ...{ ...marks, molarMasses: molarMasses!, particles: particles! },
    ...{ water, constant, depression, freezingPoint, proviso },
  });
  const names = ["water", ...solutes.map(({ en }) => en)];
  verlauf(kit, sheet, freezesAt(names, [waterGrams, ...grams]));
  note(kit, sheet, end + 6, 0, "Zusatz: Welcher der vier Stoffe trägt am meisten bei?");
}

/** An experiment with its figures on another sheet. */
export const stoffdatenSheets: readonly Layout[] = [
  { name: "Versuch mit Nachschlageblatt Stoffdaten", language: "de", build: stoffdaten },
];
