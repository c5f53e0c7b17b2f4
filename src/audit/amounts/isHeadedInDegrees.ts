import type { WorkbookSheet } from "../../workbook/model";
import { isBlank, textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { saysDegrees } from "./saysDegrees";

/** A log of readings is longer than any heading is worth looking for. */
const MOST_ROWS = 60;
/** A temperature in words, like "at −13 °C", is no heading. */
const STATED = /\d\s*[°º]/;

/**
 * Whether the heading of a table's column says degrees: from it down every row has its label, and a reading or none
 * where nobody looked.
 */
export function isHeadedInDegrees(
  sheet: WorkbookSheet,
  { row, column }: Place,
  labels: number,
): boolean {
  for (let at = row - 1; at >= Math.max(0, row - MOST_ROWS); at -= 1) {
    const text = textAt(sheet, at, column);
    if (saysDegrees(text)) return !STATED.test(text);
    if (isBlank(sheet, at, labels)) return false;
  }
  return false;
}
