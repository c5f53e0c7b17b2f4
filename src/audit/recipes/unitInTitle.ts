import type { WorkbookSheet } from "../../workbook/model";
import { looksNumeric, textAt } from "./cells";
import { unitFromWord, type AmountUnit } from "./unit";

const ROWS_ABOVE = 4;
/** "All amounts in g", "Mengen in Gramm", "Rezepte in % der Masse", "Sorts (amounts in kg)", "Menu (g)". */
const IN_UNIT = /\b(?:in|as)\s+([^\s()[\],;:][^()[\],;:]{0,24}?)\s*[)\].]?$/iu;
const BRACKETED = /[([]\s*([^()[\]]{1,12})\s*[)\]]\s*$/;

function unitIn(text: string): AmountUnit | null {
  const word = IN_UNIT.exec(text)?.[1] ?? BRACKETED.exec(text)?.[1];
  const unit = word === undefined ? null : unitFromWord(word);
  return typeof unit === "string" ? unit : null;
}

/** The unit that a title above a table names for all of it; null when none does. */
export function unitInTitle(
  sheet: WorkbookSheet,
  header: number,
  left: number,
  right: number,
): AmountUnit | null {
  for (let row = header - 1; row >= Math.max(0, header - ROWS_ABOVE); row -= 1) {
    for (let column = left; column <= right; column += 1) {
      // "Batch (kg) | 8" names the unit of its own number, beside it or below.
      if (looksNumeric(sheet, row, column + 1) || looksNumeric(sheet, row + 1, column)) continue;
      const unit = unitIn(textAt(sheet, row, column));
      if (unit !== null) return unit;
    }
  }
  return null;
}
