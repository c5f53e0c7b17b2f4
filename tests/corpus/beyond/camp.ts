import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { isAlcoholic, madeOf, upTo } from "../strollers/words";
import { declare, readings, table } from "./words";

const WIDE = 3;
const FACTS: readonly (readonly [string, ResultPlan])[] = [
  ["°C, first ice appears", { states: "freezing point", as: "formula", format: "0.0" }],
  [
    "% of its water is ice at −15 °C",
    { states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  ],
  ["% of the weight is sugars", { states: "sugar share", as: "typed", decimals: 1 }],
];

/** What is known of one ice, the number left of its words as in the list above. */
function facts(sheet: CorpusSheet, recipe: MarkedRecipe, row: number, column: number): number {
  let next = row;
  for (const [words, plan] of FACTS) {
    const label = { sheet: sheet.name, row: next, column: column + 1 };
    if (!resultAt(sheet, recipe, label, { row: next, column }, plan)) continue;
    put(sheet, next, column + 1, words);
    next += 1;
  }
  return next;
}

/** One night's ice: what the whole churn takes above, then kilograms left of the names. */
function night(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, at: number): Spot {
  const column = WIDE * at;
  putRow(sheet, 2, column, [["Tue", "Thu", "Sat"][at], made.title]);
  const { heads, names, amounts } = listed(
    sheet,
    made,
    { row: 4, column },
    {
      heads: ["kg", "what goes in"],
      cells: (item, grams) => [shown(inUnit(grams, "kg"), "0.000"), item],
      ...{ name: 1, amount: 0 },
    },
  );
  const total = sumOf(kit, sheet, { row: 3, column }, amounts, "0.000");
  put(sheet, 3, column + 1, "all told");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "kg", amountLabel: heads[0]!, total },
  });
  const next = facts(sheet, recipe, 14, column);
  nameTarget(sheet, recipe, { row: next, column: column + 1 });
  declare(sheet, recipe, { row: 19 + at, column: 0 }, `${made.title} contains`);
  return total;
}

/** Who does what, and what the freezer in the barn showed. */
function besides(kit: Kit, sheet: CorpusSheet): void {
  table(sheet, { row: 2, column: 10 }, [
    ["Kitchen hands", "Tue", "Thu", "Sat"],
    ["weighing", "Badgers", "Otters", "Foxes"],
    ["stirring", "Otters", "Foxes", "Badgers"],
    ["washing up", "Foxes", "Badgers", "Otters"],
  ]);
  const heads = putRow(sheet, 8, 10, ["Barn freezer", "breakfast (°C)", "lights out (°C)"]);
  const days = ["Mon", "Tue", "Wed", "Thu", "Fri"];
  table(
    sheet,
    { row: 9, column: 10 },
    days.map((day) => [day]),
  );
  readings(kit, sheet, heads[1]!, days.length, [-20, -16]);
  readings(kit, sheet, heads[2]!, days.length, [-18, -14]);
}

/** Three nights beside each other, the roster at the right. */
function camp(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ice nights");
  put(sheet, 0, 0, "Summer camp, week 2: what we churn on which night (60 campers, 8 leaders)");
  const mades = madeOf(kit, 3, (each) => !isAlcoholic(each)).map((made) =>
    called(upTo(made, 5000), { water: "cold tap water", "lemon juice": "fresh lemon juice" }),
  );
  const totals = mades.map((made, at) => night(kit, sheet, made, at));
  put(sheet, 17, 10, "To carry to the barn, all three (kg)");
  const spot = put(sheet, ...([17, 11] as const), shown(`=${totals.map(a1).join("+")}`, "0.0"));
  kit.marked.sums.push({ spot, parts: totals });
  besides(kit, sheet);
  note(kit, sheet, 23, 0, "Parents' list of allergies hangs inside the pantry door.");
}

/** A camp's kitchen. */
export const camps: readonly Layout[] = [
  { name: "summer camp, three ice nights beside each other", language: "en", build: camp },
];
