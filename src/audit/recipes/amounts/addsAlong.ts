import { isPlainSum } from "../../formulas/isPlainSum";
import type { CellRange, WorkbookSheet } from "../../../workbook/model";
import { rangesReadHere } from "../../formulas/rangesReadHere";
import type { Place } from "../recipeBlock";

/** What of its own row a cell adds up and nothing else: "SUM(B5:F5)". */
export function addsAlong(sheet: WorkbookSheet, place: Place): readonly CellRange[] {
  if (!isPlainSum(sheet.cellAt(place.row, place.column)?.formula ?? "")) return [];
  const read = rangesReadHere(sheet, place);
  return read.every(({ top, bottom }) => top === place.row && bottom === place.row) ? read : [];
}
