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
import { nameTarget, note, type Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { asAnswerOnly } from "../layouts/marking";
import { sumOf } from "../layouts/parts";
import { List } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { onSheet, tellAt } from "./words";

const LEARNERS = ["A. K.", "B. T.", "M. W.", "S. O.", "J. R."];

/** What the learners handed in, one below the other. */
function handedIn(kit: Kit, mades: readonly MadeRecipe[]): MarkedRecipe[] {
  const sheet = addSheet(kit.marked.book, "Handed in");
  put(sheet, 0, 0, "Assignment 2: a recipe of your own, as handed in");
  let top = 2;
  return mades.map((made, index) => {
    put(sheet, top, 0, `${LEARNERS[index]}: ${made.title}`);
    const { recipe, totalRow } = new List(kit, sheet, made, {
      ...{ top: top + 1, left: 0, columns: ["number", "name", "amount", "unit", "remark"] },
      headings: { number: "Line", name: "Used", amount: "How much", remark: "Learner's remark" },
      ...{ unit: "g", total: "Weight of the mix" },
    });
    top = totalRow + 3;
    return recipe;
  });
}

const CHECKS: readonly (readonly [string, ResultPlan])[] = [
  ["Their freezing point (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["My check: freezing point (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Their water (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Ice in the mix at −18 °C (%)", { states: "ice of mix", as: "typed", temperatureC: -18 }],
];

/** One learner's row; gives the three marks. */
function learner(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, row: number): Spot[] {
  const labels = CHECKS.map((_, at) => ({ sheet: sheet.name, row: 3, column: 2 + at }));
  putRow(sheet, row, 0, [LEARNERS[row - 5], recipe.made.title]);
  CHECKS.forEach(([, plan], at) => {
    const place = { row, column: 2 + at };
    resultAt(sheet, recipe, labels[at]!, place, plan, onSheet("Handed in", span));
    if (plan.as === "formula") asAnswerOnly(recipe);
  });
  nameTarget(sheet, recipe, { row, column: 6 });
  const marks = [kit.random.whole(2, 5), kit.random.whole(4, 10), kit.random.whole(2, 5)];
  tellAt(sheet, recipe, { row, column: 12 }, "Tasters, this has");
  return putRow(sheet, row, 7, marks);
}

/** Marks out of what can be had, the checks of the recipes before them. */
export function marking(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Marks");
  const recipes = handedIn(kit, kit.make(5));
  put(sheet, 0, 0, "Marks, assignment 2");
  const heads = putRow(sheet, 3, 0, [
    ...["Learner", "Made", ...CHECKS.map(([label]) => label), "Meant to be", "Recipe"],
    ...["Working shown", "Tasting", "Sum", "Per cent", "Read out before tasting"],
  ]);
  put(sheet, 4, 0, "can be had");
  const most = putRow(sheet, 4, 7, [5, 10, 5]);
  const all = sumOf(kit, sheet, { row: 4, column: 10 }, most);
  const rows = recipes.map((recipe, index) => learner(kit, sheet, recipe, 5 + index));
  const sums = rows.map((spots, index) => sumOf(kit, sheet, { row: 5 + index, column: 10 }, spots));
  kit.marked.formulaColumns.push({ spots: [all, ...sums], heading: heads[10]!, fixed: [] });
  beside(kit, heads[11]!, sums, {
    ...{ sheet, format: "0", fixed: [all] },
    content: (spot) => `=100*${a1(spot)}/${fixed(all)}`,
  });
  put(sheet, 10, 0, "class average");
  [...[0, 1, 2].map((at) => columnOf(rows, at)), sums].forEach((spots, at) =>
    put(sheet, 10, 7 + at, shown(`=AVERAGE(${span(spots)})`, "0.0")),
  );
  note(kit, sheet, 12, 0, "Pass is half the marks. Late work: see the college rules.");
}
