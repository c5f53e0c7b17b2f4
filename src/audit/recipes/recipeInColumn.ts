import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "./cells";
import type { Recipe } from "./recipeBlock";
import { unitFromFormat, unitFromHeader, unitFromWord } from "./unit";

/** The recipe in a column of amounts: its title by the header, its unit by format, header or the cell below. */
export function recipeInColumn(
  sheet: WorkbookSheet,
  headerRow: number | null,
  column: number,
  items: readonly number[],
): Recipe {
  const header = headerRow === null ? "" : textAt(sheet, headerRow, column);
  const below = headerRow === null ? "" : textAt(sheet, headerRow + 1, column);
  const formats = items.map((row) => unitFromFormat(sheet.cellAt(row, column)?.format));
  const fromFormat = formats.every((unit) => unit !== null) ? formats[0] : null;
  const unit = fromFormat ?? unitFromHeader(header) ?? unitFromWord(below);
  return { title: header, line: column, unit: unit ?? "g", unitAssumed: unit === null };
}
