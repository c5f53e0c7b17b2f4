import type { CellRange, Workbook, WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";

/** Of a longer range the first cells are looked at. */
const MOST_CELLS = 400;

function isFree({ cellAt }: WorkbookSheet, { top, bottom, left, right }: CellRange): boolean {
  let looked = 0;
  for (let row = top; row <= bottom; row += 1) {
    for (let column = left; column <= right; column += 1) {
      if ((cellAt(row, column)?.value ?? null) !== null) return false;
      if ((looked += 1) === MOST_CELLS) return true;
    }
  }
  return true;
}

/** Whether a formula reads cells of another sheet of which all are blank: a column that is left free in its table. */
export function readsFreeElsewhere({ sheets }: Workbook, formula: string): boolean {
  return referencesOf(formula).some(({ sheet: name, range }) => {
    const sheet = name === null ? undefined : sheets.find((each) => each.name === name);
    return sheet !== undefined && isFree(sheet, range);
  });
}
