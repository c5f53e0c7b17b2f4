import { columnIndex } from "../../../workbook/address";
import type { WorkbookSheet } from "../../../workbook/model";
import { isBlank, looksNumeric, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import type { RecipeName } from "../recipeBlock";

const QUOTIENT = /^\s*\$?([A-Z]{1,3})\$?\d+\s*\/\s*\$?([A-Z]{1,3})\$?\d+\s*(\*\s*100)?\s*$/i;

/** Whether a formula divides one number of its column by another: no amount comes of two of them. */
function isQuotient(sheet: WorkbookSheet, row: number, column: number): boolean {
  const [, above, below] = QUOTIENT.exec(sheet.cellAt(row, column)?.formula ?? "") ?? [];
  const isOwn = (letters = "") => columnIndex(letters) === column;
  return above !== undefined && isOwn(above) && isOwn(below);
}

/**
 * The names of a list without what is said right below it, with words in the place of amounts: names that nobody knows
 * ("Goes out as" with a target beside it) or how many times one is another ("Ratio"), and known ones behind a gap or a total ("Allergens" beside "milk").
 */
export function withoutRemarks(
  { sheet, check }: FinderContext,
  names: readonly RecipeName[],
  columns: readonly number[],
): readonly RecipeName[] {
  const saysWords = (row: number, column: number) =>
    textAt(sheet, row, column) !== "" && !looksNumeric(sheet, row, column);
  const isInWords = ({ row }: RecipeName): boolean =>
    columns
      .filter((column) => !isBlank(sheet, row, column))
      .every((column) => saysWords(row, column));
  const isRatio = ({ row, item }: RecipeName): boolean =>
    check(item).kind === "unknown" &&
    columns.some((column) => !isBlank(sheet, row, column)) &&
    columns.every((column) => isBlank(sheet, row, column) || isQuotient(sheet, row, column));
  const end = names.findLastIndex((name) => !isInWords(name) && !isRatio(name)) + 1;
  const isApart = (at: number) =>
    names.slice(end, at + 1).some(({ row }, past) => {
      const before = names[end + past - 1];
      return before !== undefined && row > before.row + 1;
    });
  const last = names.findLastIndex(
    ({ item }, at) => at < end || (check(item).kind !== "unknown" && !isApart(at)),
  );
  return names.slice(0, last + 1);
}
