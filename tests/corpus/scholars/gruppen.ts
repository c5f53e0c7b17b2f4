import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, type Said } from "../layouts/parts";
import { dissolved, idealGap, tolerated, type Dissolved } from "../solution";
import { shares } from "./columns";
import * as words from "./words";

const BOTH = [dissolved[0]!, dissolved[1]!] as const;

const HEADS = [
  ...["Tisch", "Zucker (g)", "Kochsalz (g)", "Wasser (g)", "Zucker (mol)", "Kochsalz (mol Ionen)"],
  ...["Erniedrigung (K)", "gefriert bei (°C)", "abgelesen (°C)"],
];

const molar = ({ molarMass }: Dissolved) => shown(molarMass, "0.00");

interface Top {
  readonly names: readonly Spot[];
  readonly molarMasses: readonly Spot[];
  readonly particles: readonly Spot[];
  readonly constant: Spot;
}

/** Sugar and salt with their constants, over the tables' results. */
function top(sheet: CorpusSheet): Top {
  const [sugar, salt] = BOTH;
  const row = (at: number, label: string, ...cells: Content[]) =>
    putRow(sheet, at, 0, [label, ...cells]).slice(1);
  return {
    names: row(2, "Gelöst werden", sugar.de, salt.de),
    molarMasses: row(3, "molare Masse (g/mol)", molar(sugar), molar(salt)),
    particles: row(4, "Teilchen", sugar.particles, salt.particles),
    constant: row(5, "Kf von Wasser (K·kg/mol)", shown(1.86, "0.00"))[0]!,
  };
}

interface Table {
  readonly grams: readonly [sugar: number, salt: number];
  readonly waterGrams: number;
}

/** What each table took. */
const tables = ({ random }: Kit): Table[] =>
  Array.from({ length: 5 }, () => {
    const waterGrams = random.pick([250, 300, 400, 500]);
    const of = (from: number, to: number) =>
      Math.max(1, Math.round((random.between(from, to) * waterGrams) / 1000));
    return { grams: [of(25, 70), of(4, 9)], waterGrams };
  });

/** One table's row: what it took, what follows, what it read. */
function tableRow(sheet: CorpusSheet, index: number, { grams, waterGrams }: Table, above: Top) {
  const row = 8 + index;
  const taken = putRow(sheet, row, 0, [index + 1, ...grams, waterGrams]).slice(1);
  const [sugar, salt, water] = taken as [Spot, Spot, Spot];
  const [m1, m2] = above.molarMasses.map(fixed);
  const [i1, i2] = above.particles.map(fixed);
  const one = put(sheet, row, 4, shown(`=${a1(sugar)}/${m1}*${i1}`, "0.0000"));
  const two = put(sheet, row, 5, shown(`=${a1(salt)}/${m2}*${i2}`, "0.0000"));
  const all = `(${a1(one)}+${a1(two)})`;
  const law = `=${fixed(above.constant)}*${all}/(${a1(water)}/1000)`;
  const depression = put(sheet, row, 6, shown(law, "0.00"));
  const freezingPoint = put(sheet, row, 7, shown(`=-${a1(depression)}`, "0.00"));
  const real = freezesAt(["water", ...BOTH.map(({ en }) => en)], [waterGrams, ...grams]);
  const read = put(sheet, row, 8, shown(real, "0.0"));
  return [sugar, salt, water, one, two, depression, freezingPoint, read] as const;
}

type Row = ReturnType<typeof tableRow>;

/** Marks the tables' solutions and the columns of their results. */
function markTables(
  { marked }: Kit,
  rows: readonly Row[],
  heads: readonly Spot[],
  { constant, ...above }: Top,
  proviso: Spot,
): void {
  for (const [sugar, salt, water, one, two, depression, freezingPoint] of rows) {
    marked.solutions.push({
      ...{ ...above, grams: [sugar, salt], moles: [one, two], water, constant },
      ...{ depression, freezingPoint, proviso },
    });
  }
  const { molarMasses, particles } = above;
  const at = (index: number) => [molarMasses[index]!, particles[index]!];
  [at(0), at(1), [constant], []].forEach((cells, index) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, 3 + index), heading: heads[4 + index]!, fixed: cells },
    }),
  );
  const read = { spots: columnOf(rows, 7), heading: heads[8]!, total: null };
  marked.numberColumns.push({ ...read, kind: "temperature" });
}

const ABEND: readonly Said[] = [
  { label: "Gefrierbeginn (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Zucker je 100 g Wasser (g)", states: "sugar per 100 g water", as: "typed" },
  { label: "in Wasser gelöst (g)", states: "dissolved", as: "typed", decimals: 0 },
];

/** Tables of an evening course, each with sugar and salt in one jug. */
function course(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kursabend 2");
  put(sheet, 0, 0, "Kursabend 2: Zucker und Salz in einem Krug");
  const above = top(sheet);
  const heads = putRow(sheet, 7, 0, HEADS);
  const list = tables(kit);
  const gaps = list.map(({ grams, waterGrams }) => idealGap(BOTH, grams, waterGrams));
  const rows = list.map((each, index) => tableRow(sheet, index, each, above));
  const gap = tolerated(Math.max(...gaps)).replace(".", ",");
  const text = `Formel für ideale Lösungen, hier auf ${gap} K brauchbar.`;
  markTables(kit, rows, heads, above, put(sheet, 14, 0, text));
  note(kit, sheet, 15, 0, "Tisch 5 räumt die Thermometer weg.");
  const next = addSheet(kit.marked.book, "Eis des Abends");
  const recipe = kit.make(1)[0]!;
  put(next, 0, 0, `Eis des Abends: ${recipe.title}`);
  words.ice(kit, next, recipe, {
    ...{ row: 2, column: 0, heads: ["Zutat", "Gramm"], total: "Gesamt" },
    ...{ said: ABEND, target: "gedacht als", lead: "Für Allergiker:" },
    extra: shares(kit, next, 2, "Prozent"),
    saidRight: 4,
  });
}

/** Sheets of an evening course. */
export const kursabende: readonly Layout[] = [
  { name: "Kursabend, Tische mit Zucker und Salz im Krug", language: "de", build: course },
];
