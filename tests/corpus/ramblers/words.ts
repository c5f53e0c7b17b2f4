import { put, putRow, type CorpusSheet, type Spot } from "../book";
import type { Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, withLines, type MadeRecipe } from "../recipes";
import type { StockLine } from "../stock";

/** How one person puts the cautions, and what stands before the allergens. */
export interface Voice {
  readonly lead: string;
  readonly honey: string;
  readonly alcohol: string;
  readonly nuts: string;
  readonly egg: string;
}

const KINDS: readonly (readonly [RegExp, Exclude<keyof Voice, "lead">])[] = [
  [/^Honey/, "honey"],
  [/^Contains alcohol/, "alcohol"],
  [/^Whole nuts/, "nuts"],
  [/^Raw egg/, "egg"],
];

/** A recipe's cautions in somebody's own words. */
export const cautionsBy = (made: MadeRecipe, voice: Voice): string[] =>
  labelWords(made, "caution").map((caution) => {
    const kind = KINDS.find(([of]) => of.test(caution));
    return kind === undefined ? caution : voice[kind[1]];
  });

/** All that the eater has to know, for one cell; empty where there is nothing. */
export function wordsBy(made: MadeRecipe, voice: Voice): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen");
  const first = allergens.length === 0 ? [] : [`${voice.lead} ${allergens.join(", ")}`];
  const cautions = cautionsBy(made, voice).map((each) => each[0]!.toUpperCase() + each.slice(1));
  return [...first, ...cautions].join(". ");
}

/** Writes it into a cell; gives the next free row. */
export function tellBy(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  voice: Voice,
): number {
  const words = wordsBy(made, voice);
  if (words === "") return row;
  flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** The same lines, those of one name put together. */
export function together(made: MadeRecipe, lines: readonly StockLine[]): MadeRecipe {
  const names = [...new Set(lines.map(({ en }) => en))];
  const merged = names.map((name) => {
    const same = lines.filter(({ en }) => en === name);
    return { ...same[0]!, grams: same.reduce((sum, { grams }) => sum + grams, 0) };
  });
  return withLines(made, merged);
}

/** A label in one cell and a formula or number in the next; gives the second. */
export const fact = (
  sheet: CorpusSheet,
  { row, column }: Place,
  label: string,
  content: Parameters<typeof put>[3],
): Spot => putRow(sheet, row, column, [label, content])[1]!;
