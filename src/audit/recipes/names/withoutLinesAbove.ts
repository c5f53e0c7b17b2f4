import type { WorkbookSheet } from "../../../workbook/model";
import { contains, referencesOf } from "../../../workbook/references";
import { holdsNumber, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import type { RecipeName } from "../recipeBlock";

/** Whether words that head what follows, without a number, stand somewhere between two rows of a list. */
function isHeadedAnew(
  sheet: WorkbookSheet,
  names: number,
  columns: readonly number[],
  [from, to]: readonly [number, number],
): boolean {
  for (let row = from + 1; row < to; row += 1) {
    const hasNumber = columns.some((column) => holdsNumber(sheet, row, column));
    if (textAt(sheet, row, names) !== "" && !hasNumber) return true;
  }
  return false;
}

/** Whether every total begins to count below a row, and at least one does. */
function isLeftOutByAll(
  sheet: WorkbookSheet,
  columns: readonly number[],
  totals: readonly number[],
  row: number,
): boolean {
  const read = totals.flatMap((total) =>
    columns.flatMap((column) => referencesOf(sheet.cellAt(total, column)?.formula ?? "")),
  );
  return read.length > 0 && read.every(({ range }) => range.top > row);
}

/** Whether a sum between two rows of a list adds up the first: then that is a part of the list with a total of its own. */
const isSummedBetween = (
  sheet: WorkbookSheet,
  columns: readonly number[],
  totals: readonly number[],
  [from, to]: readonly [number, number],
): boolean =>
  totals.some(
    (total) =>
      total > from &&
      total < to &&
      columns.some((column) =>
        referencesOf(sheet.cellAt(total, column)?.formula ?? "").some(({ range }) =>
          contains(range, from, column),
        ),
      ),
  );

/**
 * The names of a list without what is said of its recipes above their first ingredient, be there numbers or not: how
 * many bowls of each there shall be. Nobody knows it as an ingredient; below it the ingredients are headed anew, or
 * no total counts it.
 */
export function withoutLinesAbove(
  { sheet, check }: FinderContext,
  names: readonly RecipeName[],
  columns: readonly number[],
  totals: readonly number[],
): readonly RecipeName[] {
  const first = names.findIndex(({ item }) => check(item).kind !== "unknown");
  const [last, begin] = [names[first - 1], names[first]];
  if (last === undefined || begin === undefined) return names;
  const between = [last.row, begin.row] as const;
  if (isSummedBetween(sheet, columns, totals, between)) return names;
  const isAbove =
    isHeadedAnew(sheet, begin.column, columns, between) ||
    isLeftOutByAll(sheet, columns, totals, last.row);
  return isAbove ? names.slice(first) : names;
}
