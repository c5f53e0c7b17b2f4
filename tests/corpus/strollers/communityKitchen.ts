import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, fixed, put, putRow, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed, type Listed } from "../newcomers/words";
import { massOf, meets, withLines, type MadeRecipe } from "../recipes";
import { labelAt, ofAlcohol } from "./words";

/** The measures of the kitchen drawer, and the steps in which they are filled. */
const MEASURES = [
  ["cup", 4],
  ["tbsp", 1],
  ["tsp", 2],
] as const;

function weighs(name: string, quantity: number, unit: string): number {
  const grams = callFunction("GRAMS", name, quantity, unit)[0]?.[0];
  return typeof grams === "number" ? Math.round(grams) : 0;
}

interface Measure {
  readonly quantity: number;
  readonly unit: string;
  readonly grams: number;
}

/** The largest measure that takes it; the scales where none does. */
function measure(name: string, grams: number): Measure {
  for (const [unit, steps] of MEASURES) {
    const one = weighs(name, 1, unit);
    if (one === 0) continue;
    const quantity = Math.round((grams / one) * steps) / steps;
    const weight = weighs(name, quantity, unit);
    if (quantity > 0 && weight > 0) return { quantity, unit, grams: weight };
  }
  return { quantity: grams, unit: "g", grams };
}

/** The recipe as its measures really weigh. */
function measured(made: MadeRecipe, measures: readonly Measure[]): MadeRecipe {
  const lines = made.lines.map((each, index) => ({ ...each, grams: measures[index]!.grams }));
  const now = stillMet(withLines(made, lines));
  // Rounded to measures, a recipe made for a mistake may miss what it met.
  const isMissed = now.target !== null && meets(made, now.target) && !meets(now, now.target);
  return isMissed ? { ...now, target: null } : now;
}

/** Not more than a bowl of it: the batches are made one after the other. */
function homely(made: MadeRecipe): MadeRecipe {
  const part = Math.ceil(massOf(made) / 1200);
  const grams = (whole: number) => Math.max(1, Math.round(whole / part));
  return withLines(
    made,
    made.lines.map((each) => ({ ...each, grams: grams(each.grams) })),
  );
}

/** What is said under the list. */
const answersFor = (made: MadeRecipe): readonly Said[] => [
  { label: "Turns to ice from (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Water in one batch (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Sugars, per cent of the batch", states: "sugar share", as: "typed", decimals: 0 },
  ...ofAlcohol(made, "Alcohol in one batch (g)"),
  {
    label: "In the chest freezer at −20 °C, frozen of its water (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -20, decimals: 0 },
  },
];

/** What each measure weighs, for one batch and for all. */
function weighed(kit: Kit, made: MadeRecipe, list: Listed, times: Spot): MarkedRecipe {
  const { sheet, heads, rows, names, end } = list;
  const amounts = beside(kit, heads[3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0" },
    content: (spot) =>
      `=ROUND(RIME.GRAMS(${[0, 1, 2].map((column) => a1({ ...spot, column })).join(",")}),0)`,
  });
  const alsoAmounts = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0", fixed: [times] },
    content: (spot) => `=${a1(spot)}*${fixed(times)}`,
  });
  put(sheet, end, 0, "Together");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts, "0");
  sumOf(kit, sheet, { row: end, column: 4 }, alsoAmounts, "0");
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[3]!, total },
  });
}

/** Measures and what they weigh, and as much as the evening needs. */
function communityKitchen(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Thursday");
  const first = homely(kit.make(1)[0]!);
  const measures = first.names.map((name, index) => measure(name, first.grams[index]!));
  const made = measured(first, measures);
  put(sheet, 0, 0, `Cooking together: ${made.title}`);
  const [, times] = putRow(sheet, 1, 0, ["Batches tonight", random.whole(2, 5)]) as [Spot, Spot];
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["What you need", "How many", "Measure", "Weight in g", "All batches in g"],
      cells: (name, _, index) => [name, measures[index]!.quantity, measures[index]!.unit],
    },
  );
  const recipe = weighed(kit, made, list, times);
  let next = say(sheet, recipe, { row: list.end + 2, column: 0 }, answersFor(made));
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "To be eaten as" });
  next = labelAt(sheet, recipe, { row: next, column: 0 }, "Please tell everyone, contains:");
  note(kit, sheet, next + 1, 0, "Cups hang on the left wall; level them, do not press.");
}

/** A community kitchen. */
export const communityKitchens: readonly Layout[] = [
  { name: "cooking together, cups weighed by formula", language: "en", build: communityKitchen },
];
