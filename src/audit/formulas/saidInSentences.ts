import type { WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { looksNumeric, textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";

/** "171.15 g sucrose in 1000 g water", "für 1800 g". */
const SO_MUCH =
  /(?<![\p{L}\d.,])(\d+(?:[.,]\d+)?) ?(?:k?g|[mc]?l|grams?|gramm|kilos?|lit(?:re|er)s?)(?!\p{L})/giu;
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
  const said = SENTENCE.test(text) && !isLabel ? [...text.matchAll(SO_MUCH)] : [];
  return said.map(([, digits = ""]) => Number(digits.replace(",", ".")));
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

const isPercentAt = (sheet: WorkbookSheet, { row, column }: Place): boolean =>
  /^\W*%\W*$/.test(textAt(sheet, row, column + 1));

/** Whether a formula reads a number in per cent, the sign in the cell behind it: of 1800 g it takes 18 times that. */
const readsPercent = (sheet: WorkbookSheet, formula: string): boolean =>
  referencesOf(formula).some(
    ({ sheet: other, range: { top: row, left: column } }) =>
      other === null && isPercentAt(sheet, { row, column }),
  );

/** The numbers that a formula may hold as the sentences above it tell them: each amount, and all of one together. */
export function saidInSentences(
  sheet: WorkbookSheet,
  formula: string,
  { row }: Place,
): readonly number[] {
  const numbers = amountsAbove(sheet, row).flatMap((amounts) => [
    ...amounts,
    amounts.reduce((sum, one) => sum + one, 0),
    // Grams as kilograms, as a molality takes them.
    ...amounts.map((one) => one / 1000),
  ]);
  return readsPercent(sheet, formula) ? [...numbers, ...numbers.map((one) => one / 100)] : numbers;
}
