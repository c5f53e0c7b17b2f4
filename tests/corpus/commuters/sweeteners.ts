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
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { withLines, type MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import type { Answer } from "../regulars/columns";
import { itemsOf } from "../strollers/words";
import { line, type StockLine } from "../stock";
import { asBefore, chosen, hasAlcohol, warnAt } from "./words";

/** The row with the names of all that goes in. */
const HEAD_ROW = 2;

/** The line of plain sugar. */
const sugarOf = ({ lines }: MadeRecipe): StockLine | undefined =>
  lines.find(({ en }) => en === "sugar" || en === "sucrose");

const ANSWERS: readonly Answer[] = [
  ["Freezes at (°C)", { states: "freezing point", as: "formula" }],
  ["Lowered by (K)", { states: "depression", as: "typed" }],
  ["Ice at −18 °C (% of the water)", { states: "ice of water", as: "typed", temperatureC: -18 }],
  ["Ice at −18 °C (% of the whole)", { states: "ice of mix", as: "typed", temperatureC: -18 }],
  ["Sugars (% of the whole)", { states: "sugar share", as: "typed" }],
];

/** The same with some of its sugar changed for something else, gram for gram. */
function swapped(made: MadeRecipe, part: number, instead: string): MadeRecipe {
  const sugar = sugarOf(made);
  if (sugar === undefined) return made;
  const grams = Math.round(sugar.grams * part);
  const kept = made.lines.map((each) =>
    each === sugar ? { ...each, grams: each.grams - grams } : each,
  );
  const before = kept.find(({ en }) => en === instead)?.grams ?? 0;
  const others = kept.filter(({ en }) => en !== instead);
  const added = line(instead, instead, before + grams);
  return asBefore(made, withLines(made, [...others, added]));
}

interface Across {
  readonly heads: readonly Spot[];
  readonly items: readonly string[];
  readonly corner: Spot;
}

/** One version along its row; gives the sum and the share of it that is sweetener. */
function version(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, across: Across) {
  const { heads, items, corner } = across;
  const at = made.names.map((name) => items.indexOf(name));
  const amounts = at.map((item, index) => put(sheet, row, 1 + item, made.grams[index]));
  const all = items.map((_, item) => ({ sheet: sheet.name, row, column: 1 + item }));
  const end = 1 + items.length;
  const total = sumOf(kit, sheet, { row, column: end }, all);
  const names = at.map((item) => heads[1 + item]!);
  const lines = { names, amounts, unit: "g", amountLabel: corner, total, shared: true } as const;
  const recipe = markRecipe(kit, made, lines);
  const cells = `${absolute(span(heads.slice(1, end)))},${span(all)}`;
  ANSWERS.forEach(([, plan], index) => {
    const column = end + 1 + index;
    resultAt(sheet, recipe, heads[column]!, { row, column }, plan, () => cells);
  });
  nameTarget(sheet, recipe, { row, column: end + 1 + ANSWERS.length });
  warnAt(sheet, recipe, { row, column: end + 2 + ANSWERS.length }, "Contains");
  return { total, point: { ...total, column: end + 1 } };
}

/** What each row is called. */
const VERSIONS = [
  "A, as served now",
  "B, half as fructose",
  "C, half as dextrose monohydrate",
  "D, a third as xylitol",
];

const SWAPS = [
  ["fructose", 1 / 2],
  ["dextrose monohydrate", 1 / 2],
  ["xylitol", 1 / 3],
] as const;

/** How much softer or harder each is than the first. */
function against(kit: Kit, sheet: CorpusSheet, points: readonly Spot[]): void {
  const top = HEAD_ROW + 2 + points.length;
  const heads = putRow(sheet, top, 0, ["Version", "Freezing point against A (K)"]);
  const [first] = points;
  const spots = points.map((spot, index) => {
    put(sheet, top + 1 + index, 0, VERSIONS[index]);
    const formula = `=${a1(spot)}-${fixed(first!)}`;
    return put(sheet, top + 1 + index, 1, shown(formula, "0.00"));
  });
  kit.marked.formulaColumns.push({ spots, heading: heads[1]!, fixed: [first!] });
  note(kit, sheet, top + 7, 0, "Fructose tastes sweeter, so ask the panel before we decide.");
}

/** One ice with its sugar changed three times. */
function sweeteners(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sweeteners");
  const isPlain = (made: MadeRecipe) => !hasAlcohol(made) && sugarOf(made) !== undefined;
  const [made] = chosen(kit, 1, isPlain) as [MadeRecipe];
  const mades = [made, ...SWAPS.map(([instead, part]) => swapped(made, part, instead))];
  const items = itemsOf(mades);
  put(sheet, 0, 0, `Ward trolley: ${made.title}, other sweeteners in place of some sugar`);
  const heads = putRow(sheet, HEAD_ROW, 0, [
    ...["Version, weights in g", ...items, "Sum", ...ANSWERS.map(([label]) => label)],
    ...["Goes out as", "Diet office note"],
  ]);
  const across = { heads, items, corner: heads[0]! };
  const rows = mades.map((each, index) => {
    put(sheet, HEAD_ROW + 1 + index, 0, VERSIONS[index]);
    return version(kit, sheet, each, HEAD_ROW + 1 + index, across);
  });
  const totals = rows.map(({ total }) => total);
  const points = rows.map(({ point }) => point);
  const end = 1 + items.length;
  kit.marked.formulaColumns.push({ spots: totals, heading: heads[end]!, fixed: [] });
  kit.marked.formulaColumns.push({ spots: points, heading: heads[end + 1]!, fixed: [] });
  against(kit, sheet, points);
}

/** A dietitian. */
export const sweetenerSheets: readonly Layout[] = [
  { name: "dietitian, one ice and four sweeteners in rows", language: "en", build: sweeteners },
];
