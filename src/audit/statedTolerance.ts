import type { WorkbookSheet } from "../workbook/model";
import { textAt } from "./recipes/cells";
import { sheetTexts } from "./recipes/sheetTexts";

/** "Good to ±0.3 K", "auf ±0,3 K genau", "Toleranz 0,4 K", "within 0.2 °C". */
const TOLERANCE =
  /(?:±|\+\/-|\+-|tolerance|toleranz|within|good to|accurate to|genau auf|auf)\D{0,12}?(\d+(?:[.,]\d+)?)\s*(?:k\b|°\s?c|kelvin|degrees?)/i;
const SAYS_TOLERANCE = /±|\+\/-|toler|within|good to|accura|genau/i;

const known = new WeakMap<WorkbookSheet, number | null>();

function read(sheet: WorkbookSheet): number | null {
  for (const [row, columns] of sheetTexts(sheet).columnsByRow) {
    for (const column of columns) {
      const text = textAt(sheet, row, column);
      const digits = SAYS_TOLERANCE.test(text) ? TOLERANCE.exec(text)?.[1] : undefined;
      if (digits !== undefined) return Number(digits.replace(",", "."));
      const beside = sheet.cellAt(row, column + 1)?.value;
      if (/^(toler|tolerance|toleranz)/i.test(text) && typeof beside === "number") return beside;
    }
  }
  return null;
}

/** How far off, in K, a sheet says that its own law may be; null when it does not say. */
export function statedToleranceK(sheet: WorkbookSheet): number | null {
  const before = known.get(sheet);
  if (before !== undefined) return before;
  const answer = read(sheet);
  known.set(sheet, answer);
  return answer;
}
