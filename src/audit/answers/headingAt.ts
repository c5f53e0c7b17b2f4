import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import { isUnit } from "./isUnit";

/** What heads a column of answers: its words, with the unit in a cell of its own right below: "Sugars in it", below "% of the weight". */
export function headingAt(sheet: WorkbookSheet, headerRow: number, column: number): string {
  const words = textAt(sheet, headerRow, column);
  const unit = words === "" ? "" : textAt(sheet, headerRow + 1, column);
  return unit !== "" && isUnit(unit) && !isUnit(words) ? `${words}, ${unit}` : words;
}
