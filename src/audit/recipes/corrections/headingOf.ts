import type { CellRange, WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";

const LONGEST = 200;

/** The words in the first row of a range: by them it is known again. */
export function headingOf(sheet: WorkbookSheet, { top, left, right }: CellRange): string {
  const words: string[] = [];
  for (let column = left; column <= right; column += 1) {
    const text = textAt(sheet, top, column);
    if (text !== "") words.push(text);
  }
  return words.join(" | ").slice(0, LONGEST);
}
