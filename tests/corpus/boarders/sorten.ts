import { put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, type Kit } from "../kit";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { goods, labelLine, shopPhrases } from "./worte";

/** Rows of the sheet: the kinds, how often each is made, then what goes into it. */
export const KINDS = 3;
export const BATCHES = 4;
const FIRST = 6;

const BELOW: readonly (readonly [string, ResultPlan])[] = [
  ["fängt an zu gefrieren (°C)", { states: "freezing point", as: "formula" }],
  ["Wasser drin, auch aus Obst und Milch (g)", { states: "water", as: "typed", decimals: 0 }],
  ["gefroren in der Truhe (% vom Wasser)", { states: "ice of water", as: "formula" }],
  ["Eis in der Truhe (% von allem)", { states: "ice of mix", as: "formula" }],
  ["Zucker (% von allem)", { states: "sugar share", as: "typed", decimals: 0 }],
];

export interface Board {
  readonly sheet: CorpusSheet;
  readonly names: readonly Spot[];
  readonly unit: Spot;
  /** The words under the things, top to bottom. */
  readonly labels: readonly Spot[];
  readonly freezer: Spot;
}

/** The words of the sheet, and how cold the freezer is. */
export function board(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Board {
  const { random, marked } = kit;
  const unit = put(sheet, 0, 0, `Eiswagen, Woche ${random.whole(18, 36)}, alles in Gramm`);
  const [label, freezer] = putRow(sheet, 1, 0, ["Truhe (°C)", -random.whole(13, 17)]);
  marked.inputs.push({ label: label!, value: freezer!, bare: "Truhe" });
  put(sheet, KINDS, 0, "Sorte");
  put(sheet, BATCHES, 0, "so oft machen");
  const names = goods(mades).map(({ name }, index) => put(sheet, FIRST + index, 0, name));
  const words = ["zusammen (g)", ...BELOW.map(([text]) => text), "soll sein", "Aushang am Wagen"];
  const end = FIRST + names.length;
  const labels = words.map((text, index) => put(sheet, end + index, 0, text));
  return { sheet, names, unit, labels, freezer: freezer! };
}

/** What is said of a kind under it. */
function said(recipe: MarkedRecipe, column: number, { sheet, names, labels, freezer }: Board) {
  const [, ...rest] = labels;
  const all = span(names.map((spot) => ({ ...spot, column })));
  const call = `${span(names).replace(/([A-Z]+)/g, "$$$1")},${all}`;
  const temperatureC = sheet.cells[freezer.row]![freezer.column]!.content as number;
  BELOW.forEach(([, plan], index) => {
    const served = plan.states.startsWith("ice") ? { temperature: freezer, temperatureC } : {};
    const format = plan.as === "formula" ? { format: "0.0" } : {};
    const label = rest[index]!;
    const place = { row: label.row, column };
    resultAt(sheet, recipe, label, place, { ...plan, ...format, ...served }, () => call);
  });
  const [target, told] = rest.slice(-2) as [Spot, Spot];
  nameTarget(sheet, recipe, { row: target.row, column });
  const words = labelLine(recipe.made, "enthält", shopPhrases);
  if (words !== "") recipe.flags.push(put(sheet, told.row, column, words));
}

/** One kind down its column; gives the cell with its batches. */
export function kind(kit: Kit, made: MadeRecipe, column: number, on: Board): Spot {
  const { sheet, names, unit } = on;
  put(sheet, KINDS, column, made.title);
  const batches = put(sheet, BATCHES, column, kit.random.whole(1, 5));
  const things = new Map(names.map((spot) => [sheet.cells[spot.row]![0]!.content, spot]));
  const lines = made.names.map((name) => things.get(name)!);
  const amounts = lines.map(({ row }, index) => put(sheet, row, column, made.grams[index]));
  const all = names.map((spot) => ({ ...spot, column }));
  const total = sumOf(kit, sheet, { row: on.labels[0]!.row, column }, all);
  const marks = { names: lines, amounts, total, unit: "g", amountLabel: unit } as const;
  said(markRecipe(kit, made, { ...marks, shared: true }), column, on);
  return batches;
}
