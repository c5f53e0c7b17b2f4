import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { input } from "../page";
import { withLines, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { line, type StockLine } from "../stock";
import { isPiece, sugarsIn } from "./packet";
import { tries } from "./tries";
import { oneOf, sound, tellAt } from "./words";

const isSugar = ({ en }: StockLine): boolean => en === "sugar" || en === "sucrose";

/** The same with less sugar, something else for a part of what is left out. */
function swapped(made: MadeRecipe, keep: number, other: string, part: number): MadeRecipe {
  const sugar = made.lines.find(isSugar)!.grams;
  const kept = made.lines
    .map((each) => (isSugar(each) ? { ...each, grams: Math.round(each.grams * keep) } : each))
    .filter(({ en }) => en !== other);
  const added = line(other, other, Math.round(sugar * (1 - keep) * part));
  return stillMet(withLines(made, [...kept, added]));
}

const ANSWERS: readonly (readonly [string, ResultPlan])[] = [
  ["Freezes at (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Frozen water at −18 °C (%)", { states: "ice of water", as: "typed", temperatureC: -18 }],
  ["Sugars in all of it (%)", { states: "sugar share", as: "typed" }],
];

interface Board {
  readonly sheet: CorpusSheet;
  readonly items: readonly Spot[];
  readonly sugars: readonly Spot[];
  readonly scoop: Spot;
  readonly amountLabel: Spot;
}

/** One way of making it, down its column. */
function variant(kit: Kit, made: MadeRecipe, column: number, board: Board): void {
  const { sheet, items, sugars, scoop, amountLabel } = board;
  const names = made.names.map((name) =>
    items.find(({ row }) => sheet.cells[row]![0]!.content === name),
  ) as Spot[];
  const amounts = names.map(({ row }, index) => put(sheet, row, column, made.grams[index]));
  const all = items.map((spot) => ({ ...spot, column }));
  const row = items.at(-1)!.row + 1;
  const total = sumOf(kit, sheet, { row, column }, all);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", shared: true, total, amountLabel },
  });
  const product = `=SUMPRODUCT(${absolute(span(sugars))},${span(all)})/100`;
  const sugar = put(sheet, row + 1, column, shown(product, "0"));
  const each = `=${a1(sugar)}/${a1(total)}*${fixed(scoop)}`;
  put(sheet, row + 2, column, shown(each, "0.0"));
  ANSWERS.forEach(([, plan], index) => {
    const label = { sheet: sheet.name, row: row + 4 + index, column: 0 };
    const lines = `${absolute(span(items))},${span(all)}`;
    resultAt(sheet, recipe, label, { row: label.row, column }, plan, () => lines);
  });
  nameTarget(sheet, recipe, { row: row + 7, column });
  tellAt(sheet, recipe, { row: row + 8, column }, "Has");
}

/** The usual ice and three ways of making it with other sugars. */
function waysOf(kit: Kit): readonly (readonly [string, MadeRecipe])[] {
  const made = oneOf(kit, ({ lines }) => !lines.some(isPiece));
  const plain = sound(kit, made);
  return [
    ["as Gran made it", made],
    ["a third less", swapped(plain, 0.67, "inulin", 0.4)],
    ["half allulose", swapped(plain, 0.5, "allulose", 1)],
    ["some fructose", swapped(plain, 0.6, "fructose", 0.8)],
  ];
}

/** The usual ice beside ways with less sugar in them. */
function swaps(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Swaps");
  const ways = waysOf(kit);
  put(sheet, 0, 0, `${ways[0]![1].title} for Dad: less sugar, still soft?`);
  const words = { label: "One scoop (g)", bare: "One scoop", value: kit.random.pick([55, 60, 70]) };
  const scoop = input(kit, sheet, { row: 1, column: 0 }, words);
  const amountLabel = put(sheet, 3, 2, "grams I weighed");
  putRow(sheet, 4, 0, ["In the bowl", "sugars in 100 g (g)", ...ways.map(([name]) => name)]);
  const all = [...new Set(ways.flatMap(([, { names }]) => names))];
  const items = all.map((name, index) => put(sheet, 5 + index, 0, name));
  const sugars = all.map((name, index) => put(sheet, 5 + index, 1, shown(sugarsIn(name), "0.0")));
  const row = 5 + all.length;
  [
    ...["bowl", "sugars in the bowl (g)", "sugars in a scoop (g)", undefined],
    ...[...ANSWERS.map(([label]) => label), "comes out as", "careful!"],
  ].forEach((label, index) => put(sheet, row + index, 0, label));
  const board = { sheet, items, sugars, scoop, amountLabel };
  ways.forEach(([, each], index) => variant(kit, each, 2 + index, board));
  note(kit, sheet, row + 10, 0, "Allulose counted as a sugar here, the nurse says ask her first.");
}

/** Sheets of somebody who cooks for a family with diabetes in it. */
export const home: readonly Layout[] = [
  { name: "family cook, sugar swaps side by side", language: "en", build: swaps },
  { name: "family cook, tries and their sugars", language: "en", build: tries },
];
