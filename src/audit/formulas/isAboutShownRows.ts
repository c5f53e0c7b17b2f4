import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { isFilteredOut, within } from "../amounts/hiddenLines";
import type { Place } from "../recipes/recipeBlock";
import { precedentsOf } from "./precedents";
import { rangesRead } from "./rangesRead";

const COUNTS_SHOWN = /\b(SUBTOTAL|AGGREGATE)\s*\(/i;

/** Whether a formula counts only the rows shown of cells of which a filter hides some. */
function leavesOutHidden(workbook: Workbook, sheet: WorkbookSheet, formula: string): boolean {
  if (!COUNTS_SHOWN.test(formula)) return false;
  return rangesRead(workbook)(sheet, formula).some(({ sheet: other, range }) => {
    const hidden = [...other.hiddenRows].sort((one, another) => one - another);
    return within(hidden, range.top, range.bottom).some((row) => isFilteredOut(other, row));
  });
}

/** Whether an answer is worked out from the rows that a filter shows: it is not about the whole list then. */
export function isAboutShownRows(workbook: Workbook, sheet: WorkbookSheet, place: Place): boolean {
  if (workbook.sheets.every(({ filtered = [] }) => filtered.length === 0)) return false;
  const own = { sheet, range: { top: place.row, left: place.column } };
  return [own, ...precedentsOf(workbook, sheet, place)].some(({ sheet: other, range }) => {
    const formula = other.cellAt(range.top, range.left)?.formula;
    return formula !== undefined && leavesOutHidden(workbook, other, formula);
  });
}
