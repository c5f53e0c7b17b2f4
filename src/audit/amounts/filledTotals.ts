import { isPlainSum } from "../formulas/isPlainSum";
import { contains, referencesOf } from "../../workbook/references";
import type { AuditContext } from "../context";
import { patternAt, type FilledLine } from "../formulas/filledLines";
import { filledColumns } from "../formulas/filledRuns";
import type { Place } from "../recipes/recipeBlock";
import { isFarFromSum } from "./isFarFromSum";
import { totalElsewhere } from "./totalElsewhere";
import { agrees, sumOf, type Summand, type Totalled } from "./totalledLines";

/** Sums along a row read few cells. */
const MOST_SUMMANDS = 400;

/** The numbers that a sum would read in a place; null when it reads itself, whole columns or other sheets. */
function summandsOf({ sheet }: FilledLine, sum: string, { row, column }: Place): Summand[] | null {
  const summands: Summand[] = [];
  for (const { sheet: other, range } of referencesOf(sum)) {
    const { top, bottom, left, right } = range;
    const size = (bottom - top + 1) * (right - left + 1);
    if (other !== null || size > MOST_SUMMANDS || contains(range, row, column)) return null;
    for (let at = 0; at < size; at += 1) {
      const width = right - left + 1;
      const place = { row: top + Math.floor(at / width), column: left + (at % width) };
      const cell = sheet.cellAt(place.row, place.column);
      if (typeof cell?.value !== "number") continue;
      summands.push({
        ...{ place, value: cell.value },
        counts: cell.value !== 0 || cell.formula !== undefined,
      });
    }
  }
  return summands;
}

/** A total unlike the sums around it, and the numbers that it does not count. */
export interface FilledTotal {
  readonly total: Totalled;
  readonly missing: readonly Summand[];
}

function totalAt(line: FilledLine, place: Place): FilledTotal[] {
  const { sheet } = line;
  const cell = sheet.cellAt(place.row, place.column);
  const summands = summandsOf(line, patternAt(line, place), place);
  if (typeof cell?.value !== "number" || summands === null || summands.length === 0) return [];
  const total = totalElsewhere(sheet, place, cell.value, summands);
  const { formula } = total;
  if (formula === undefined)
    return agrees(total, sumOf(summands)) || isFarFromSum(total) ? [] : [{ total, missing: [] }];
  const read = referencesOf(formula).map(({ range }) => range);
  const missing = summands.filter(
    ({ counts, place: { row, column } }) =>
      counts && !read.some((range) => contains(range, row, column)),
  );
  return isPlainSum(formula) && missing.length > 0 ? [{ total, missing }] : [];
}

/**
 * The totals that stand in a line of sums and do not add up what the others would in their place: what a day takes of
 * everything, what all flavours take of one ingredient.
 */
export const filledTotals = (context: AuditContext): FilledTotal[] =>
  filledColumns(context)
    .filter(({ pattern }) => isPlainSum(pattern))
    .flatMap((line) => line.strangers.flatMap((place) => totalAt(line, place)));
