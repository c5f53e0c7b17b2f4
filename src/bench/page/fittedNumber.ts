import type { Language } from "./createGrid";
import { shownNumber } from "./typedNumber";

const DIGIT_PX = 8.2; // of the grid's usual type, Arial at 11 points
const PADDING_PX = 4;

/** A number as a cell without a number format shows it: with as many digits as the column's width holds. */
export function fittedNumber(value: number, widthPx: number, language: Language): string {
  const room = Math.floor((widthPx - PADDING_PX) / DIGIT_PX);
  for (let digits = 12; digits > 0; digits -= 1) {
    const text = shownNumber(Number(value.toPrecision(digits)), language);
    const isRounded = Math.abs(value) >= 10 ** digits; // 123 may not become 100
    if (text.length <= room && !isRounded) return text;
  }
  for (let digits = 5; digits >= 0; digits -= 1) {
    const text = value.toExponential(digits).replace("e", "E");
    if (text.length <= room) return language === "de" ? text.replace(".", ",") : text;
  }
  return "#".repeat(Math.max(room, 1));
}
