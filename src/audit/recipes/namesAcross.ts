import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "./cells";
import type { RecipeName } from "./recipeBlock";
import { unitFromHeader, unitFromWord, type AmountUnit } from "./unit";

const UNIT_AT_END =
  /\s*[([]\s*(g|kg|%|oz|lb|grams?|gramm)\s*[)\]]\s*$|[\s,]+(?:in )?(g|kg|%|oz|lb)$/i;

/** The name in a header like "Lemon juice (g)". */
export const itemName = (header: string): string => header.replace(UNIT_AT_END, "").trim();

/** One unit for the whole row of names, by its headers or the row of units below. */
export function unitOfNames(
  sheet: WorkbookSheet,
  names: readonly RecipeName[],
  row: number,
): AmountUnit | null {
  for (const { column } of names) {
    const header = textAt(sheet, row, column);
    const unit = UNIT_AT_END.test(header)
      ? unitFromHeader(header)
      : unitFromWord(textAt(sheet, row + 1, column));
    if (unit !== null) return unit;
  }
  return null;
}
