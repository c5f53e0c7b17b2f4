import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import type { MarkedRecipe } from "../marks";
import { labelWords, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";

const FIRST = 5;
const ANSWERS = [
  "Begins to freeze (°C)",
  "Drop below 0 °C (K)",
  "Water frozen in the van (%)",
  "Sugars, % of the tub",
  "All the water in it (g)",
];

interface Board {
  readonly sheet: CorpusSheet;
  readonly names: readonly Spot[];
  readonly title: Spot;
  readonly van: Spot;
  readonly scoop: Spot;
}

const plans = ({ sheet, van }: Board): readonly ResultPlan[] => [
  { states: "freezing point", as: "formula" },
  { states: "depression", as: "formula" },
  {
    ...{ states: "ice of water", as: "formula", temperature: van },
    temperatureC: sheet.cells[van.row]![van.column]!.content as number,
  },
  { states: "sugar share", as: "typed" },
  { states: "water", as: "typed", decimals: 0 },
];

/** What the van says of a flavour, under its column. */
function answers(sheet: CorpusSheet, recipe: MarkedRecipe, column: number, board: Board): void {
  const { names: items } = board;
  const all = items.map((spot) => ({ ...spot, column }));
  const end = FIRST + items.length;
  const lines = `${absolute(span(items))},${span(all)}`;
  plans(board).forEach((plan, index) => {
    const row = end + 3 + index;
    const label = { sheet: sheet.name, row, column: 0 };
    resultAt(sheet, recipe, label, { row, column }, plan, () => lines);
  });
  nameTarget(sheet, recipe, { row: end + 9, column });
  if (!recipe.made.flagged) return;
  (["allergen", "caution"] as const).forEach((which, index) => {
    const words = labelWords(recipe.made, which);
    if (words.length === 0) return;
    recipe.flags.push(put(sheet, end + 10 + index, column, words.join(" + ")));
  });
}

/** One flavour in its column. */
function flavour(kit: Kit, made: MadeRecipe, column: number, board: Board): void {
  const { sheet, names: items, title, scoop } = board;
  put(sheet, FIRST - 1, column, made.title);
  const names = made.names.map((name) =>
    items.find(({ row }) => sheet.cells[row]![0]!.content === name)!,
  );
  const amounts = names.map(({ row }, index) =>
    put(sheet, row, column, shown(inUnit(made.grams[index]!, "kg"), "0.000")),
  );
  const all = items.map((spot) => ({ ...spot, column }));
  const end = FIRST + items.length;
  const total = sumOf(kit, sheet, { row: end, column }, all, "0.000");
  put(sheet, end + 1, column, `=ROUND(${a1(total)}*1000/${absolute(a1(scoop))},0)`);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "kg", amountLabel: title, total, shared: true },
  });
  answers(sheet, recipe, column, board);
}

/** The van's flavours across, what goes in down the side. */
function van(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "This season");
  const title = put(sheet, 0, 0, "Beach van: what goes in a tub, in kg");
  const words = { label: "Van freezer (°C)", bare: "Van freezer", value: -random.whole(14, 18) };
  const freezer = input(kit, sheet, { row: 1, column: 0 }, words);
  const size = { label: "Scoop (g)", bare: "Scoop", value: random.pick([60, 70, 80]) };
  const scoop = input(kit, sheet, { row: 2, column: 0 }, size);
  const mades = kit.make(4);
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  const names = items.map((name, index) => put(sheet, FIRST + index, 0, name));
  const end = FIRST + items.length;
  put(sheet, FIRST - 1, 0, "Goes in");
  ["A tub weighs", "Scoops out of it"].forEach((each, index) => put(sheet, end + index, 0, each));
  ANSWERS.forEach((each, index) => put(sheet, end + 3 + index, 0, each));
  ["Serve it", "Allergens", "Warn about"].forEach((each, index) =>
    put(sheet, end + 9 + index, 0, each),
  );
  const board = { sheet, names, title, van: freezer, scoop };
  mades.forEach((made, index) => flavour(kit, made, 1 + index, board));
  round(kit);
  note(kit, sheet, end + 13, 0, "Tubs go in the van the night before, lids taped.");
}

const STOPS = ["Car park", "Slipway", "Pier", "Campsite", "Back home"];

/** What the van's dial showed on its round. */
function round({ marked, random }: Kit): void {
  const sheet = addSheet(marked.book, "Round");
  const heads = putRow(sheet, 0, 0, ["Stop", "Dial (°C)", "Scoops sold"]);
  const spots = STOPS.map((stop, index) => {
    const dial = shown(-random.whole(27, 36) / 2, "0.0");
    return putRow(sheet, 1 + index, 0, [stop, dial, random.whole(12, 60)])[1]!;
  });
  marked.numberColumns.push({ spots, heading: heads[1]!, total: null, kind: "temperature" });
}

/** An ice-cream van at the sea. */
export const vans: readonly Layout[] = [
  { name: "beach van, tubs across in kilograms", language: "en", build: van },
];
