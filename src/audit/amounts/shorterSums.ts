import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { contains, overlaps } from "../../workbook/references";
import type { AuditContext } from "../context";
import { rangeOfAll } from "../formulas/sumFormulas";
import { columnSums, type ColumnSum } from "./columnSums";
import type { FilledTotal } from "./filledTotals";
import { listsOn } from "./listsOn";
import { numbersInRows } from "./numbersInRows";
import { totalElsewhere } from "./totalElsewhere";

const MOST_SUMMANDS = 400;

const sizeOf = ({ top, bottom }: CellRange): number => bottom - top + 1;

/** A sum that leaves out what the widest sum in its row counts, and all of it numbers. */
function shorterSum(sheet: WorkbookSheet, sum: ColumnSum, rows: CellRange): FilledTotal[] {
  const { row, column, range } = sum;
  const stored = sheet.cellAt(row, column)?.value;
  const isWithin = range.top >= rows.top && range.bottom <= rows.bottom;
  // Far fewer rows are a part that is summed up by itself.
  const isMostOfIt = 2 * sizeOf(range) > sizeOf(rows) && sizeOf(range) < sizeOf(rows);
  if (typeof stored !== "number" || !isWithin || !isMostOfIt) return [];
  const summands = numbersInRows(sheet, column, rows) ?? [];
  const missing = summands.filter(
    ({ counts, place }) => counts && !contains(range, place.row, place.column),
  );
  return missing.length > 0
    ? [{ total: totalElsewhere(sheet, sum, stored, summands), missing }]
    : [];
}

function shorterOnSheet(sheet: WorkbookSheet, lists: readonly CellRange[]): FilledTotal[] {
  return [...columnSums(sheet).values()].flatMap((sums) => {
    const widest = sums.reduce<CellRange | null>(
      (most, { range }) => (most === null || sizeOf(range) > sizeOf(most) ? range : most),
      null,
    );
    if (widest === null || sizeOf(widest) > MOST_SUMMANDS) return [];
    return sums
      .flatMap((sum) => shorterSum(sheet, sum, widest))
      .filter(({ total: { summands } }) => {
        const read = rangeOfAll(summands.map(({ place }) => place));
        return !lists.some((list) => overlaps(list, read));
      });
  });
}

/**
 * Sums in a row below a table that is no recipe, of which one counts more rows than another: portions and kilograms
 * of a week. What a recipe's totals should count is known better from the recipe.
 */
export const shorterSums = ({ workbook, blocks }: AuditContext): FilledTotal[] =>
  workbook.sheets.flatMap((sheet) => {
    const lists = listsOn(blocks, sheet);
    return shorterOnSheet(sheet, lists);
  });
