import { put, type Content, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit } from "../kit";
import { say, type Place, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, type MadeRecipe } from "../recipes";
import { ALCOHOL } from "../stock";

/** Recipes of a kind, as far as there are any; one with a mistake in it is always among them. */
export function suited(kit: Kit, count: number, test: (made: MadeRecipe) => boolean): MadeRecipe[] {
  const mades = kit.make(20);
  const wrong = mades.filter(({ seeded }) => seeded !== undefined);
  const right = mades.filter(({ seeded }) => seeded === undefined);
  const others = right.filter((made) => !test(made));
  return [...wrong, ...right.filter(test), ...others].slice(0, count);
}

/** Whether there is a spirit in it. */
export const isBoozy = ({ lines }: MadeRecipe): boolean =>
  lines.some(({ caution }) => caution === ALCOHOL.caution);

/** Tells the eater one thing a line, the allergens after a word; gives the next free row. */
export function tellBelow(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): number {
  const { made, flags } = recipe;
  if (!made.flagged) return row;
  const allergens = labelWords(made, "allergen");
  const first = allergens.length === 0 ? [] : [`${lead} ${allergens.join(", ")}`];
  const all = [...first, ...labelWords(made, "caution")];
  all.forEach((words, index) => flags.push(put(sheet, row + index, column, words)));
  return row + all.length;
}

export interface Words {
  readonly said: readonly Said[];
  /** The label of the serving target. */
  readonly target: string;
  /** What stands before the allergens, and where; two rows under the rest without a place. */
  readonly lead: string;
  readonly tellAt?: Place;
  readonly note: string;
}

/** All that a sheet says of a recipe besides its lines. */
export function sayAll(
  kit: Kit,
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  { said, target, lead, tellAt, note: words }: Words,
): void {
  const next = say(sheet, recipe, { row, column }, said);
  nameTarget(sheet, recipe, { row: next, column, label: target });
  const at = tellAt ?? { row: next + 2, column };
  const last = tellBelow(sheet, recipe, at, lead);
  note(kit, sheet, last + 1, at.column, words);
}

/** A label and what stands right of it; gives the cell at the right. */
export function pair(
  sheet: CorpusSheet,
  row: number,
  column: number,
  ...two: [string, Content]
): Spot {
  put(sheet, row, column, two[0]);
  return put(sheet, row, column + 1, two[1]);
}

const PRICES: readonly (readonly [RegExp, from: number, to: number])[] = [
  [/^water$/, 0.01, 0.01],
  [/sugar|sucrose|dextrose|fructose|syrup|salt/, 0.9, 3.2],
  [/^whole milk|yogurt/, 1.1, 2.6],
  [/cream|juice|coffee|puree|banana/, 1.9, 6.2],
  [/nuts|pistachios|vodka|rum|chocolate|honey/, 9, 24],
];

/** About what a kilogram costs. */
export function costOfKilo({ random }: Kit, en: string): number {
  const [, from, to] = PRICES.find(([words]) => words.test(en)) ?? [/./, 3, 9];
  return Number(random.between(from, to).toFixed(2));
}
