import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "./cells";
import type { Recipe } from "./recipeBlock";
import { ratioUnit } from "./amounts/ratioUnit";
import {
  leadingUnit,
  unitFromFormat,
  unitFromHeader,
  unitFromWord,
  type AmountUnit,
  type ShareUnit,
} from "./amounts/unit";

/** Mass fractions have the letter w. */
const SHARE =
  /(^|[\s,(/])w(?=\)?$)|\b(shares?|fractions?|proportions?|parts?|\p{L}*(anteile?|bruchteile?))(?!\p{L})/iu;

/** A column of shares that names no unit is one of fractions when it comes to 1, of percent when to 100. */
function shareUnit(
  sheet: WorkbookSheet,
  header: string,
  column: number,
  items: readonly number[],
): ShareUnit | null {
  if (!SHARE.test(header)) return null;
  const values = items.map((row) => sheet.cellAt(row, column)?.value);
  const numbers = values.filter((value) => typeof value === "number");
  const small = numbers.filter((value) => value <= 1).length;
  return small * 2 > numbers.length ? "fraction" : numbers.length > 0 ? "%" : null;
}

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
  const written = fromFormat ?? ratioUnit(header) ?? unitFromHeader(header) ?? unitBelow;
  const unit = written ?? shareUnit(sheet, header, column, items) ?? otherwise;
  return { title: header, line: column, unit: unit ?? "g", unitAssumed: unit === null };
}
