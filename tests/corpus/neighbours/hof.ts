import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { perHundred, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { toldOf } from "../strangers/etikett";
import { labels } from "./etikettdatei";
import { ownJars } from "./glaeser";

const TOP = 4;

const BELOW = [
  ...["Summe", "Gefrierpunkt in °C", "Wasser in 100 g (g)", "Zucker von der Masse (%)"],
  ...["Eis von der Masse bei −18 °C (%)", "Wasser, davon gefroren bei −18 °C (%)"],
  ...["gedacht für", "draufschreiben"],
];

const SAID: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula", format: "0.0" },
  { states: "water", as: "typed", decimals: 1 },
  { states: "sugar share", as: "typed" },
  { states: "ice of mix", as: "typed", temperatureC: -18 },
  { states: "ice of water", as: "typed", temperatureC: -18 },
];

interface Matrix {
  readonly names: readonly Spot[];
  readonly title: Spot;
  readonly labels: readonly Spot[];
  /** The row of the kilograms to make, over the lines to weigh in. */
  readonly batchRow: number;
}

const at = ({ sheet, row }: Spot, column: number): Spot => ({ sheet, row, column });

/** The kilograms to weigh in of one kind, under its per cents; gives their cells. */
function weighing(kit: Kit, sheet: CorpusSheet, column: number, matrix: Matrix): Spot[] {
  const { names, batchRow } = matrix;
  const batch = put(sheet, batchRow, column, 5 * kit.random.whole(2, 6));
  const read = a1(batch).replace(/\d+$/, "$$$&");
  const spots = names.map((name, index) => {
    const content = `=${a1(at(name, column))}/100*${read}`;
    return put(sheet, batchRow + 1 + index, column, shown(content, "0.000"));
  });
  const heading = at(batch, column);
  kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
  sumOf(kit, sheet, { row: batchRow + 1 + names.length, column }, spots, "0.000");
  return spots;
}

/** One kind down its column: per cents, what it is like, and what to weigh in. */
function kind(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, matrix: Matrix) {
  const { names, title: amountLabel, labels: below } = matrix;
  put(sheet, TOP - 1, column, made.title);
  const words = names.map(({ row }) => sheet.cells[row]![0]!.content);
  const own = made.names.map((name) => words.indexOf(name));
  const amounts = own.map((index, line) => put(sheet, names[index]!.row, column, made.grams[line]));
  const all = names.map((name) => at(name, column));
  const total = sumOf(kit, sheet, { row: below[0]!.row, column }, all, "0.0");
  const kilograms = weighing(kit, sheet, column, matrix);
  const recipe: MarkedRecipe = markRecipe(kit, made, {
    ...{ names: own.map((index) => names[index]!), amounts, unit: "%", amountLabel, total },
    ...{ alsoAmounts: own.map((index) => kilograms[index]!), shared: true },
  });
  const lines = `${absolute(span(names))},${span(all)}`;
  SAID.forEach((plan, index) => {
    const label = below[1 + index]!;
    resultAt(sheet, recipe, label, { row: label.row, column }, plan, () => lines);
  });
  nameTarget(sheet, recipe, { row: below[6]!.row, column });
  const told = toldOf(made);
  if (made.flagged && told !== "") recipe.flags.push(put(sheet, below[7]!.row, column, told));
}

const OWN = { Pfirsich: "Pfirsiche", Banane: "Bananen" };

/** The year's kinds in columns, in per cent; below them the kilograms to weigh in. */
function kinds(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rezepturen");
  put(sheet, 0, 0, "Milchhof, Eis aus eigener Milch und eigenem Obst");
  const title = put(sheet, 1, 0, "Massenprozent");
  const mades = kit.make(4).map((made) => called(stillMet(perHundred(made)), OWN));
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  put(sheet, TOP - 1, 0, "Zutat");
  const rows = items.map((item, index) => putRow(sheet, TOP + index, 0, [item]));
  const names = columnOf(rows, 0);
  const end = TOP + items.length;
  const below = BELOW.map((label, index) => put(sheet, end + index, 0, label));
  const batchRow = end + BELOW.length + 2;
  put(sheet, batchRow - 1, 0, "Zum Einwiegen, alles in kg");
  put(sheet, batchRow, 0, "Charge (kg)");
  [...items, "Summe"].forEach((item, index) => put(sheet, batchRow + 1 + index, 0, item));
  const matrix = { names, title, labels: below, batchRow };
  mades.forEach((made, index) => kind(kit, sheet, made, 1 + index, matrix));
  note(kit, sheet, batchRow + 3 + items.length, 0, "Milch erst pasteurisieren, dann mischen.");
  ownJars(kit);
}

/** Sheets of a farm with milk and fruit. */
export const hof: readonly Layout[] = [
  { name: "Milchhof, Rezepturen in Spalten", language: "de", build: kinds },
  { name: "Milchhof, Etiketten als Datei", language: "de", isCsv: true, build: labels },
];
