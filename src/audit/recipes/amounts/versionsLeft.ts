import type { WorkbookSheet } from "../../../workbook/model";
import { isErrorAt } from "../cells";
import type { Segment } from "../segments";
import { isNumbering } from "./isNumbering";

/** What stands beside the names: columns, rows of totals, columns that titles of recipes head, and whether more may. */
interface Titles {
  readonly beside: readonly number[];
  readonly totals: readonly number[];
  readonly titles: readonly number[];
  readonly isHeading: (column: number) => boolean;
}

/** The version of a recipe left of its names, where another stands right of them and both are added up. */
export function versionsLeft(
  sheet: WorkbookSheet,
  { column: names }: Segment,
  items: readonly number[],
  { beside, totals, titles, isHeading }: Titles,
): number[] {
  const isAddedUp = (column: number) =>
    totals.some(
      (row) =>
        typeof sheet.cellAt(row, column)?.value === "number" || isErrorAt(sheet, row, column),
    );
  if (!titles.some(isAddedUp)) return [];
  return beside.filter((column) => {
    const values = items.map((row) => sheet.cellAt(row, column)?.value);
    const filled = values.filter((value) => typeof value === "number").length;
    const isAmong = column < names && isAddedUp(column) && isHeading(column);
    return isAmong && filled * 2 >= items.length && !isNumbering(values);
  });
}
