import type { WorkbookSheet } from "../../../workbook/model";
import { partOf } from "../../answers/partLabel";
import { looksNumeric, textAt } from "../cells";
import { nextColumn } from "../nextFilled";
import { ratioUnit } from "./ratioUnit";
import { leadingUnit, unitFromWord, type AmountUnit } from "./unit";

const ROWS_ABOVE = 6;
/** "All amounts in g", "Mengen in Gramm", "Sorten (Gramm je Ansatz)", "grams per batch", "Rezepte in % der Masse", "Sorts (amounts in kg)", "Menu (g)". */
const IN_UNIT = /\b(?:in|as)\s+([^\s()[\],;:][^()[\],;:]{0,24}?)\s*[)\].]?$/iu;
const BRACKETED = /[([]\s*([^()[\];]{1,24})\s*(?:;[^()[\]]*)?[)\]]\s*$/;

/** "All shares in % m/m": for more than the one number that may stand beside or below. */
const OF_ALL =
  /\b(all|every\w*|alles?|aller|sämtliche\w*|amounts|shares|mengen|anteile|angaben|werte)\b/i;

/** "All the water (g)" with its number beside it is one answer. */
const saysOfAll = (text: string): boolean => OF_ALL.test(text) && partOf(text) === null;

/** The unit that a title names for all numbers below it: in its words, in brackets, or first. */
export function unitIn(text: string): AmountUnit | null {
  const ratio = ratioUnit(text);
  if (ratio !== null) return ratio;
  const words = [IN_UNIT.exec(text)?.[1], BRACKETED.exec(text)?.[1]];
  const units = words.map((word = "") => unitFromWord(word) ?? leadingUnit(word));
  return (
    [...units, leadingUnit(text), unitFromWord(text)].find((unit) => typeof unit === "string") ??
    null
  );
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
      const text = textAt(sheet, row, column);
      // "Batch (kg) | 8" names the unit of its own number, beside it or below.
      const isOfOne = [
        [row, nextColumn(sheet, row, column)],
        [row + 1, column],
      ].some(([at, beside]) => looksNumeric(sheet, at ?? row, beside ?? column));
      const unit = isOfOne && !saysOfAll(text) ? null : unitIn(text);
      if (unit !== null) return unit;
    }
  }
  return null;
}
