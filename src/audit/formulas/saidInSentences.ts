import type { WorkbookSheet } from "../../workbook/model";
import { looksNumeric, textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { numbersSaid } from "./numbersSaid";

/** A question or a sentence has so many words. */
const SENTENCE = /(?:[\p{L}\d]+\W+){4}/u;
/** It stands at most so many rows above what is worked out of it, and only the nearest are read. */
const [REACH, NEAREST] = [40, 2];

type Amounts = readonly number[];

const known = new WeakMap<WorkbookSheet, ReadonlyMap<number, Amounts>>();

/** The amounts that a text tells; none where it labels a number beside it. */
function amountsIn(sheet: WorkbookSheet, row: number, column: number): Amounts {
  const text = textAt(sheet, row, column);
  const isLabel = [1, 2, 3].some((step) => looksNumeric(sheet, row, column + step));
  return SENTENCE.test(text) && !isLabel ? numbersSaid.grams(text) : [];
}

/** What the sentences of a sheet tell, by row. */
function amountsByRow(sheet: WorkbookSheet): ReadonlyMap<number, Amounts> {
  const found =
    known.get(sheet) ??
    new Map(
      [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]): [number, Amounts][] => {
        const amounts = columns.flatMap((column) => amountsIn(sheet, row, column));
        return amounts.length > 0 ? [[row, amounts]] : [];
      }),
    );
  known.set(sheet, found);
  return found;
}

/** What the nearest sentences above a row tell. */
function amountsAbove(sheet: WorkbookSheet, row: number): readonly Amounts[] {
  const told = amountsByRow(sheet);
  if (told.size === 0) return [];
  return Array.from({ length: REACH }, (_, at) => told.get(row - 1 - at))
    .filter((amounts) => amounts !== undefined)
    .slice(0, NEAREST);
}

/** The numbers that a formula may hold as the sentences above it tell them: each mass, and all of one sentence together. */
export const saidInSentences = (sheet: WorkbookSheet, { row }: Place): readonly number[] =>
  amountsAbove(sheet, row)
    .flatMap((amounts) => [...amounts, amounts.reduce((sum, one) => sum + one, 0)])
    .flatMap(numbersSaid.asTaken);
