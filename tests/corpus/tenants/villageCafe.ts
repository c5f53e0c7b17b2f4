import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { resultAt, type ResultPlan } from "../results";
import type { MadeRecipe } from "../recipes";
import { namesOf, perKilo, tellOnce } from "./words";

const ANSWERS: readonly (readonly [string, ResultPlan])[] = [
  ["Freezes from, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Water in it, g", { states: "water", as: "typed", decimals: 0 }],
  ["Sugars, % of the weight", { states: "sugar share", as: "typed" }],
  [
    "Ice in the scooping cabinet (−13 °C), % of the mix",
    { states: "ice of mix", as: "typed", temperatureC: -13, decimals: 0 },
  ],
  ["Dissolved in the water, g", { states: "dissolved", as: "formula", format: "0" }],
];

interface Grid {
  readonly sheet: CorpusSheet;
  readonly names: readonly Spot[];
  readonly prices: string;
  readonly title: Spot;
}

/** The column of one ice. */
function ice(kit: Kit, made: MadeRecipe, column: number, grid: Grid): void {
  const { sheet, names, prices, title } = grid;
  put(sheet, 2, column, made.title);
  const items = names.map(({ row }) => sheet.cells[row]![0]!.content);
  const at = made.names.map((name) => items.indexOf(name));
  const amounts = at.map((item, index) => put(sheet, 3 + item, column, made.grams[index]));
  const all = names.map(({ row }) => ({ sheet: sheet.name, row, column }));
  const end = 3 + names.length;
  const total = sumOf(kit, sheet, { row: end, column }, all);
  const money = `=SUMPRODUCT(${prices},${span(all)})/1000`;
  put(sheet, end + 1, column, shown(money, "0.00"));
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((item) => names[item]!), amounts, unit: "g", amountLabel: title },
    ...{ total, shared: true },
  });
  const lines = `${absolute(span(names))},${span(all)}`;
  let next = end + 3;
  for (const [, plan] of ANSWERS) {
    const label = { sheet: sheet.name, row: next, column: 0 };
    resultAt(sheet, recipe, label, { row: next++, column }, plan, () => lines);
  }
  nameTarget(sheet, recipe, { row: next, column });
  tellOnce(sheet, recipe, { row: next + 1, column }, "Contains");
}

const LABELS = [
  ...["Weight of the batch, g", "Ingredients cost, £", undefined],
  ...ANSWERS.map(([label]) => label),
  ...["Should come out", "For the card"],
];

/** Down the side: what goes in, and its price. */
function side(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Spot[][] {
  const english = new Map(
    mades.flatMap(({ names, lines }) => names.map((name, at) => [name, lines[at]!.en] as const)),
  );
  putRow(sheet, 2, 0, ["What goes in", "£ per kg"]);
  return namesOf(mades).map((name, index) => {
    const price = shown(perKilo(kit.random, english.get(name)!), "0.00");
    return putRow(sheet, 3 + index, 0, [name, price]);
  });
}

/** The ices of the summer beside each other, their ingredients down the side. */
function villageCafe(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Ices");
  const title = put(sheet, 0, 0, "Summer ices at the village café, weights in grams");
  const mades = kit.make(5).map((made) => called(made, { sugar: "white sugar" }));
  const rows = side(kit, sheet, mades);
  const [names, prices] = [columnOf(rows, 0), columnOf(rows, 1)];
  const end = 3 + names.length;
  LABELS.forEach((label, index) => put(sheet, end + index, 0, label));
  const grid = { sheet, names, prices: absolute(span(prices)), title };
  mades.forEach((made, index) => ice(kit, made, 2 + index, grid));
  note(kit, sheet, end + LABELS.length + 1, 0, "New cabinet key is on the hook.");
}

/** A café in a village. */
export const villageCafes: readonly Layout[] = [
  { name: "village café, the summer's ices across", language: "en", build: villageCafe },
];
