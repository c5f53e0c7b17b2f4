import { put, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { sumOf, type Place } from "../layouts/parts";
import type { Chance } from "../random";
import { labelWords, type MadeRecipe } from "../recipes";
import { columnOf } from "../kitchens/hand";
import { ALCOHOL } from "../stock";

/** Writes one row a line of the recipe; gives the cells of each. */
export const lineRows = (
  sheet: CorpusSheet,
  { row, column }: Place,
  made: MadeRecipe,
  contents: (index: number) => readonly Content[],
): Spot[][] =>
  made.names.map((_, index) =>
    contents(index).map((content, at) => put(sheet, row + index, column + at, content)),
  );

interface Summed {
  /** Where the names and the amounts stand in a row, counted from its first cell. */
  readonly name: number;
  readonly amount: number;
  readonly heads: readonly Spot[];
  readonly word: string;
  /** How many rows are left free over the sum. */
  readonly gap?: number;
  readonly format?: string;
}

/** The cells of a list that markRecipe asks for, its amounts summed under them. */
export function summed(
  kit: Kit,
  sheet: CorpusSheet,
  rows: readonly (readonly Spot[])[],
  { name, amount, heads, word, gap = 0, format }: Summed,
) {
  const [names, amounts] = [columnOf(rows, name), columnOf(rows, amount)];
  const row = amounts.at(-1)!.row + 1 + gap;
  put(sheet, row, names[0]!.column, word);
  const total = sumOf(kit, sheet, { row, column: amounts[0]!.column }, amounts, format);
  return { names, amounts, total, amountLabel: heads[amount]! };
}

const PRICES: readonly (readonly [RegExp, from: number, to: number])[] = [
  [/^water$/, 0.01, 0.01],
  [/sugar|sucrose|dextrose|syrup|^salt/, 0.9, 3],
  [/^whole milk$/, 1.1, 1.8],
  [/cream|yogurt|juice|coffee/, 2.5, 6.5],
  [/nuts|pistachios|vodka/, 13, 26],
];

/** What a kilogram usually costs. */
export function usualPrice(random: Chance, en: string): number {
  const [, from, to] = PRICES.find(([words]) => words.test(en)) ?? [/./, 3, 9];
  return Number(random.between(from, to).toFixed(2));
}

/** Whether there is a spirit in it. */
export const hasSpirit = ({ lines }: MadeRecipe): boolean =>
  lines.some(({ caution }) => caution === ALCOHOL.caution);

/** What has to be told of a recipe, in the words of one cell. */
export const toldIn = (made: MadeRecipe): string =>
  [...labelWords(made, "allergen"), ...labelWords(made, "caution")].join("; ");

/** All names of some recipes, each once. */
export const namesIn = (mades: readonly MadeRecipe[]): string[] => [
  ...new Set(mades.flatMap(({ names }) => names)),
];
