import { put, span, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import type { Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, massOf, withLines, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { stillMet } from "../kitchens/hand";

/** How somebody puts what has to be told. */
export interface Voice {
  readonly lead: string;
  readonly honey: string;
  readonly alcohol: string;
  readonly nuts: string;
  readonly egg: string;
}

const KINDS: readonly (readonly [RegExp, Exclude<keyof Voice, "lead">])[] = [
  [/^(Honey|Honig)/, "honey"],
  [/^(Contains|Enthält) [Aa]l[ck]o/, "alcohol"],
  [/^(Whole nuts|Ganze Nüsse)/, "nuts"],
  [/^(Raw egg|Rohes Eigelb)/, "egg"],
];

/** The cautions of a recipe in somebody's words. */
export const cautionsOf = (made: MadeRecipe, voice: Voice): string[] =>
  made.flagged
    ? labelWords(made, "caution").map((caution) => {
        const kind = KINDS.find(([of]) => of.test(caution))?.[1];
        return kind === undefined ? caution : voice[kind];
      })
    : [];

/** All that has to be told, in one text; empty where there is nothing. */
export function toldBy(made: MadeRecipe, voice: Voice): string {
  const allergens = made.flagged ? labelWords(made, "allergen").join(", ") : "";
  const first = allergens === "" ? [] : [`${voice.lead} ${allergens}.`];
  return [...first, ...cautionsOf(made, voice)].join(" ");
}

/** Tells it in one cell; gives the next free row. */
export function declare(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  voice: Voice,
): number {
  const words = toldBy(made, voice);
  if (words === "") return row;
  flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** A recipe's lines as the functions are given them. */
export const linesOf = (names: readonly Spot[], amounts: readonly Spot[]): string =>
  `${span(names)},${span(amounts)}`;

export type Told = readonly [label: string, plan: ResultPlan];

/** Results under, or right of, labels that are already there. */
export function fill(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  cells: readonly { readonly label: Spot; readonly at: Place; readonly plan: ResultPlan }[],
  lines: string,
): void {
  for (const { label, at, plan } of cells) resultAt(sheet, recipe, label, at, plan, () => lines);
}

/** Writes down a column. */
export const down = (
  sheet: CorpusSheet,
  { row, column }: Place,
  contents: readonly Content[],
): Spot[] => contents.map((content, index) => put(sheet, row + index, column, content));

/** The same recipe, about so many grams of it, in steps of five from twenty grams on. */
export function about(made: MadeRecipe, grams: number): MadeRecipe {
  const factor = grams / massOf(made);
  const step = (whole: number) =>
    whole < 20 ? Math.max(1, Math.round(whole)) : 5 * Math.round(whole / 5);
  const lines = made.lines.map((each) => ({ ...each, grams: step(each.grams * factor) }));
  return stillMet(withLines(made, lines));
}

/** A column of thermometer readings, marked as such. */
export function readings(
  { marked, random }: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  [count, from, to]: readonly [count: number, from: number, to: number],
): void {
  const place = { row: heading.row + 1, column: heading.column };
  const contents = Array.from({ length: count }, () => ({
    ...{ content: random.whole(2 * from, 2 * to) / 2, format: "0.0" },
  }));
  const spots = down(sheet, place, contents);
  marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}
