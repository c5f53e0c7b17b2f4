import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "./cells";
import type { Recipe } from "./recipeBlock";
import { ratioUnit } from "./amounts/ratioUnit";
import { shareUnit } from "./amounts/shareUnit";
import { unitOfHeading } from "./amounts/unitOfHeading";
import { leadingUnit, unitFromFormat, unitFromWord, type AmountUnit } from "./amounts/unit";

/** The recipe in a column of amounts: its title by the header, its unit by format, header or the cell below, else as said. */
export function recipeInColumn(
  sheet: WorkbookSheet,
  headerRow: number | null,
  column: number,
  items: readonly number[],
  otherwise: AmountUnit | null = null,
): Recipe {
  const header = headerRow === null ? "" : textAt(sheet, headerRow, column);
  const below = headerRow === null ? "" : textAt(sheet, headerRow + 1, column);
  const formats = items.map((row) => unitFromFormat(sheet.cellAt(row, column)?.format));
  const fromFormat = formats.every((unit) => unit !== null) ? formats[0] : null;
  const unitBelow = unitFromWord(below) ?? leadingUnit(below);
  const written = fromFormat ?? ratioUnit(header) ?? unitOfHeading(header) ?? unitBelow;
  const values = items.map((row) => sheet.cellAt(row, column)?.value);
  const unit = written ?? shareUnit(header, values) ?? otherwise;
  return { title: header, line: column, unit: unit ?? "g", unitAssumed: unit === null };
}
