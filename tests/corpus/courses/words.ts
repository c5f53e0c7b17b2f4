import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { freezesAt, type Place, type Problem } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, type MadeRecipe } from "../recipes";

/** Cautions in a teacher's own words, by the stock's. */
export type OwnWords = readonly (readonly [RegExp, string])[];

/** What has to be told of a recipe, after a lead; empty where there is nothing. */
export function told(made: MadeRecipe, lead: string, own: OwnWords = []): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen").join(", ");
  const cautions = labelWords(made, "caution").map(
    (caution) => own.find(([of]) => of.test(caution))?.[1] ?? caution,
  );
  return [...(allergens === "" ? [] : [`${lead} ${allergens}.`]), ...cautions].join(" ");
}

/** Tells it in one cell; gives the next free row. */
export function tellAt(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  words: string,
): number {
  if (words === "") return row;
  recipe.flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** Marks formulas one below the other, or beside each other, as a column. */
export function asFormulas(
  { marked }: Kit,
  heading: Spot,
  spots: readonly Spot[],
  fixed: readonly Spot[] = [],
): void {
  marked.formulaColumns.push({ spots, heading, fixed });
}

/** Marks numbers under a heading as temperatures. */
export function asTemperatures({ marked }: Kit, heading: Spot, spots: readonly Spot[]): void {
  marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}

/** Rows one below the other, each from the same column. */
export const rowsAt = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): Spot[][] => rows.map((contents, index) => putRow(sheet, row + index, column, contents));

/** Where a solution of the lesson really begins to freeze. */
export const trulyFreezes = ({ solute, waterGrams, grams }: Problem): number =>
  freezesAt(["water", solute.en], [waterGrams, grams]);

/** A thermometer's reading of it, some tenths off. */
export const readOff = (problem: Problem, tenths = 0) =>
  shown(Number((trulyFreezes(problem) + tenths / 10).toFixed(1)), "0.0");

/** A number as Germans write it. */
export const withComma = (text: string): string => text.replace(".", ",");
