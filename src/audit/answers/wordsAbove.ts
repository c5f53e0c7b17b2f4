import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";

/** The nearest words over a place in its column, at most so many rows away; "" where there are none. */
export function wordsAbove(sheet: WorkbookSheet, { row, column }: Place, reach: number): string {
  for (let above = row - 1; above >= Math.max(0, row - reach); above -= 1) {
    const words = textAt(sheet, above, column);
    if (words !== "") return words;
  }
  return "";
}
