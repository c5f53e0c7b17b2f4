import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf, type Reference } from "../../../workbook/references";
import { isBlank } from "../cells";
import { headerRole } from "../headings/headerRole";
import type { Place, Recipe } from "../recipeBlock";
import { massIn } from "./unit";

/**
 * Rows below names that are worked out from prices, or from what was: what each ingredient costs, and its part of
 * the money. What is told in grams is none of them.
 */
export function ofMoney(
  sheet: WorkbookSheet,
  names: readonly Place[],
  rows: readonly Recipe[],
): ReadonlySet<number> {
  const money = new Set<number>();
  const isOfMoney =
    (column: number) =>
    ({ range: { top, bottom, left, right } }: Reference) =>
      top === bottom && money.has(top) && left <= column && column <= right;
  const isFromMoney = (row: number) => {
    const filled = names.filter(({ column }) => !isBlank(sheet, row, column));
    const from = filled.filter(({ column }) =>
      referencesOf(sheet.cellAt(row, column)?.formula ?? "").some(isOfMoney(column)),
    );
    return from.length * 2 > filled.length;
  };
  for (const { title, line } of rows) {
    const isPrice = headerRole(title) === "price";
    if (isPrice || (massIn(title) === null && money.size > 0 && isFromMoney(line))) money.add(line);
  }
  return money;
}
