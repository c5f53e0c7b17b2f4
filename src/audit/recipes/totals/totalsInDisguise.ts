import { contains, referencesOf } from "../../../workbook/references";
import type { WorkbookSheet } from "../../../workbook/model";
import { amountText } from "../amounts/amountText";
import { isSumOfColumn } from "./isSumOfColumn";
import { holdsNumber, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import { nameInList } from "../names/nameInList";

const CLOSE = 0.003;
const EXACT = 0.0005;
/** Shares in one decimal come to 100 within so much, and what stands for their sum is not farther off than this. */
const WHOLE_WITHIN = 0.003;
const SUM_OF_SHARES = { least: 0.8, most: 1.25 };

/** Whether lines make 100 % by themselves: another one about as large as all of them is their sum, right or wrong. */
const isOfShares = (value: number, sum: number): boolean =>
  [1, 100].some(
    (whole) =>
      Math.abs(sum / whole - 1) <= WHOLE_WITHIN &&
      value >= SUM_OF_SHARES.least * whole &&
      value <= SUM_OF_SHARES.most * whole,
  );

/** Whether a total of the list counts a row: then it is a line, though it may weigh as much as all the others. */
const isCounted = (
  sheet: WorkbookSheet,
  row: number,
  columns: readonly number[],
  totals: readonly number[],
): boolean =>
  columns.some((column) =>
    totals.some((total) => {
      const formula = sheet.cellAt(total, column)?.formula ?? "";
      const isSum = total > row && isSumOfColumn(sheet, total, column);
      return isSum && referencesOf(formula).some(({ range }) => contains(range, row, column));
    }),
  );

/** Figures of a line stand at most so far right of its amounts. */
const REACH = 4;

/** Whether a line has a number of its own typed where the others have theirs: a price, a strength; sums have none. */
function hasOwnFigure(
  sheet: WorkbookSheet,
  row: number,
  items: readonly number[],
  columns: readonly number[],
): boolean {
  const from = Math.min(...columns) - 1;
  const beside = Array.from({ length: Math.max(...columns) + REACH - from }, (_, at) => from + at);
  const isTyped = (line: number, column: number) =>
    holdsNumber(sheet, line, column) && sheet.cellAt(line, column)?.formula === undefined;
  return beside
    .filter((column) => !columns.includes(column))
    .some((column) => isTyped(row, column) && items.every((line) => isTyped(line, column)));
}

/**
 * Rows of a list whose name is unknown and whose numbers are the sums of the others', or of those above, in every
 * column, or stand below all of 100 %: totals, whatever they are called and wherever they stand.
 */
export function totalsInDisguise(
  { sheet, check }: FinderContext,
  names: number,
  items: readonly number[],
  columns: readonly number[],
  said: readonly number[],
): readonly number[] {
  const numberAt = (row: number, column: number): number => {
    const value = sheet.cellAt(row, column)?.value;
    // "920 g" is as much a sum as 920.
    if (typeof value === "string") return amountText(value)?.number ?? 0;
    return typeof value === "number" ? value : 0;
  };
  const sumOf = (rows: readonly number[], column: number) =>
    rows.reduce((sum, row) => sum + numberAt(row, column), 0);
  const isSum = (row: number, column: number): boolean => {
    const value = numberAt(row, column);
    const others = items.filter((other) => other !== row && numberAt(other, column) !== 0);
    if (others.length < 2) return false;
    const above = others.filter((other) => other < row);
    const isNear = (some: readonly number[], close: number) =>
      some.length > 1 && Math.abs(sumOf(some, column) / value - 1) <= close;
    // Half of a mix may happen to weigh about as much as the other half, and a third line with a price as much as two.
    const isByChance =
      above.length === 2 &&
      others.length > above.length &&
      hasOwnFigure(sheet, row, items, columns);
    if ((!isByChance && isNear(above, CLOSE)) || isNear(others, EXACT)) return true;
    const isLast = above.length > 2 && above.length === others.length;
    return isLast && isOfShares(value, sumOf(above, column));
  };
  return items.filter((row) => {
    if (check(nameInList(textAt(sheet, row, names), check).item).kind !== "unknown") return false;
    const filled = columns.filter((column) => numberAt(row, column) > 0);
    const isSummed = (column: number) => isSumOfColumn(sheet, row, column);
    if (!filled.some(isSummed) && isCounted(sheet, row, columns, said)) return false;
    const summed = filled.filter((column) => isSummed(column) || isSum(row, column));
    // Beside sums that are formulas a typed number is a total, too, right or wrong.
    const isTotal = summed.length === filled.length || summed.some(isSummed);
    return summed.length > 0 && summed.length * 2 >= filled.length && isTotal;
  });
}
