import { putRow, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { type Place, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic } from "../strollers/words";
import { usualPrice } from "../unseen/shared";

export interface Table {
  readonly heads: readonly Spot[];
  readonly rows: readonly (readonly Spot[])[];
  /** The first row under it. */
  readonly end: number;
}

/** A little table beside or under a recipe. */
export function table(
  sheet: CorpusSheet,
  { row, column }: Place,
  heads: readonly Content[],
  rows: readonly (readonly Content[])[],
): Table {
  return {
    heads: putRow(sheet, row, column, heads),
    rows: rows.map((cells, index) => putRow(sheet, row + 1 + index, column, cells)),
    end: row + 1 + rows.length,
  };
}

/** What each line of a recipe costs a kilogram. */
export const pricesOf = ({ random }: Kit, { lines }: MadeRecipe): number[] =>
  lines.map(({ en }) => usualPrice(random, en));

/** A temperature in halves of a degree. */
export const halfDegrees = ({ random }: Kit, from: number, to: number): number =>
  random.whole(2 * from, 2 * to) / 2;

/** What is said of a recipe, with the alcohol where there is any. */
export const alsoAlcohol = (made: MadeRecipe, said: readonly Said[], of: Said): readonly Said[] =>
  isAlcoholic(made) ? [...said, of] : said;
