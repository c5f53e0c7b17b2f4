import type { WorkbookSheet } from "../../workbook/model";
import { looksNumeric, textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { carriesUnit, saysUnit } from "./inputLabel";

/** Rows of inputs are few, and so are their numbers. */
const MOST_INPUTS = 30;

/** Whether the labels above or below carry their units, and the heading does not: rows of inputs, not a table. */
export function isRowOfInputs(
  sheet: WorkbookSheet,
  { row, column }: Place,
  labels: number,
): boolean {
  const isInput = (at: number) =>
    carriesUnit(textAt(sheet, at, labels)) && looksNumeric(sheet, at, column);
  if (![row - 1, row + 1].some(isInput)) return false;
  let above = row - 1;
  while (above >= Math.max(0, row - MOST_INPUTS) && looksNumeric(sheet, above, column)) above -= 1;
  return !saysUnit(textAt(sheet, above, column));
}

/** The last of the numbers right of a label: of a row of inputs all are told at once. */
export function lastInRow(sheet: WorkbookSheet, { row, column }: Place): number {
  let last = column;
  while (last < column + MOST_INPUTS && typeof sheet.cellAt(row, last + 1)?.value === "number")
    last += 1;
  return last;
}
