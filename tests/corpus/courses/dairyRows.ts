import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { kilos, namesOf } from "../layouts/marking";
import { markRecipe } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { asTemperatures, tellAt, told } from "./words";

const TOP = 4;
const FIRST = 2;

/** What stands right of the amounts. */
const ANSWERS: readonly (readonly [heading: string, plan: ResultPlan])[] = [
  ["ΔTf (K)", { states: "depression", as: "formula", format: "0.00" }],
  ["Tf (°C)", { states: "freezing point", as: "typed", decimals: 2 }],
  ["Water (g)", { states: "water", as: "formula", format: "0" }],
  [
    "Frozen water at −12 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -12, decimals: 1 },
  ],
];

interface Grid {
  readonly heads: readonly Spot[];
  readonly batch: Spot;
  readonly answers: readonly Spot[];
  readonly last: number;
}

/** The heading row: ingredients, the batch, answers and what else there is to say. */
function heading(sheet: CorpusSheet, items: readonly string[]): Grid {
  putRow(sheet, TOP, 0, ["Trial", "Ice"]);
  put(sheet, TOP - 1, FIRST, "Grams of");
  const heads = putRow(sheet, TOP, FIRST, items);
  const right = FIRST + items.length;
  const batch = put(sheet, TOP, right, "Batch (g)");
  const labels = ANSWERS.map(([words]) => words);
  const answers = putRow(sheet, TOP, right + 1, labels);
  const last = right + 1 + answers.length;
  putRow(sheet, TOP, last, ["For", "Label", "Drawn at (°C)"]);
  return { heads, batch, answers, last };
}

/** One trial in its row; gives the draw temperature's cell. */
function trial(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, index: number, grid: Grid): Spot {
  const { heads, batch, answers, last } = grid;
  const row = TOP + 1 + index;
  putRow(sheet, row, 0, [`T${index + 1}`, made.title]);
  const items = made.names.map((name) => heads[columnOfItem(kit, heads, name)]!);
  const amounts = items.map((head, at) => put(sheet, row, head.column, made.grams[at]));
  const all = span(heads.map((head) => ({ ...head, row })));
  const total = put(sheet, row, batch.column, `=SUM(${all})`);
  kit.marked.sums.push({ spot: total, parts: amounts });
  const amountLabel = { ...heads[0]!, row: TOP - 1 };
  const lines = { names: items, amounts, unit: "g", shared: true, amountLabel, total } as const;
  const recipe: MarkedRecipe = markRecipe(kit, made, lines);
  ANSWERS.forEach(([, plan], at) => {
    const label = answers[at]!;
    const calls = (): string => `${span(heads)},${all}`;
    resultAt(sheet, recipe, label, { row, column: label.column }, plan, calls);
  });
  nameTarget(sheet, recipe, { row, column: last });
  tellAt(sheet, recipe, { row, column: last + 1 }, told(made, "Contains"));
  return put(sheet, row, last + 2, shown(-kit.random.whole(50, 62) / 10, "0.0"));
}

/** Which of the headings holds a name. */
function columnOfItem({ marked }: Kit, heads: readonly Spot[], name: string): number {
  const sheet = marked.book.sheets[0]!;
  return heads.findIndex(({ row, column }) => sheet.cells[row]?.[column]?.content === name);
}

/** The apprentices' week: who has which duty. */
function duties(sheet: CorpusSheet, row: number): void {
  putRow(sheet, row, 1, ["Mon", "Tue", "Wed", "Thu", "Fri"]);
  putRow(sheet, row + 1, 0, ["Churn", "AK", "RB", "AK", "MO", "RB"]);
  putRow(sheet, row + 2, 0, ["Wash-up", "RB", "MO", "RB", "AK", "MO"]);
  putRow(sheet, row + 3, 0, ["Lab book", "MO", "AK", "MO", "RB", "AK"]);
}

/** Trials in rows, ingredients across. */
function dairy(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Trials");
  put(sheet, 0, 0, "Dairy apprentices, second year, pilot plant");
  put(sheet, 1, 0, "Balance the mix on paper first, then book the batch freezer.");
  const own = { sugar: "beet sugar", "skim milk powder": "skimmed milk powder" };
  const mades = kit.make(4).map((made) => called(kilos(made, 4), own));
  const grid = heading(sheet, namesOf(mades));
  const drawn = mades.map((made, index) => trial(kit, sheet, made, index, grid));
  asTemperatures(kit, { sheet: sheet.name, row: TOP, column: grid.last + 2 }, drawn);
  const mean = `=AVERAGE(${a1(drawn[0]!)}:${a1(drawn.at(-1)!)})`;
  put(sheet, TOP + 5, grid.last + 1, "mean");
  put(sheet, TOP + 5, grid.last + 2, shown(mean, "0.0"));
  duties(sheet, TOP + 8);
  note(kit, sheet, TOP + 13, 0, "Barrel scraped by hand: allow for 150 g left behind.");
}

/** Dairy apprentices. */
export const dairyRows: readonly Layout[] = [
  { name: "dairy apprentices, a trial in each row", language: "en", build: dairy },
];
