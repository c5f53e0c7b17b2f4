import type { WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";

const REACH = 4;

/** What a row of amounts calls itself: by the first words in its columns, as what it is sold as stands behind its name. */
export function titleOfRow(
  sheet: WorkbookSheet,
  row: number,
  left: number,
  firstColumn: number,
): string {
  const first = textAt(sheet, row, left);
  if (first !== "") return first;
  for (let column = Math.max(0, firstColumn - REACH); column < firstColumn; column += 1) {
    const text = textAt(sheet, row, column);
    if (text !== "") return text;
  }
  return `row ${row + 1}`;
}
