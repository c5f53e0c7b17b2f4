import type { WorkbookSheet } from "../../workbook/model";
import { moveFormula } from "../../workbook/moveFormula";
import type { Place } from "../recipes/recipeBlock";

/** Whether a formula is that of another cell, filled on to its place. */
export function goesOnFrom(sheet: WorkbookSheet, place: Place, other: Place): boolean {
  const formula = sheet.cellAt(place.row, place.column)?.formula;
  const from =
    other.row < 0 || other.column < 0 ? undefined : sheet.cellAt(other.row, other.column)?.formula;
  if (formula === undefined || from === undefined) return false;
  return moveFormula(from, place.row - other.row, place.column - other.column) === formula;
}
