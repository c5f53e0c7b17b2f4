import type { WorkbookSheet } from "../../workbook/model";
import { looksNumeric, textAt } from "../recipes/cells";
import { nextColumn } from "../recipes/nextFilled";
import { sheetTexts } from "../recipes/sheetTexts";

/** "All amounts in grams", "Grams for 1 pot" anywhere on the sheet is a unit too, unless it heads or labels numbers of its own; "1 kg" is none. */
const SAYS_MASS =
  /\b(in|all|alle|angaben)\b.{0,20}(?<!\d\s?)\b(g|kg|grams?|gramm|kilograms?|kilogramm|oz|%)\b|^(g|kg|grams?|gramm) (for|per|of|in|für|pro|je|von) (1 )?\p{L}/iu;

const saysOn = (sheet: WorkbookSheet): boolean =>
  [...sheetTexts(sheet).columnsByRow].some(([row, columns]) =>
    columns.some((column) => {
      const text = textAt(sheet, row, column);
      const isOfNumbers =
        looksNumeric(sheet, row, nextColumn(sheet, row, column)) ||
        looksNumeric(sheet, row + 1, column);
      return SAYS_MASS.test(text) && !/mol\b/i.test(text) && !isOfNumbers;
    }),
  );

const known = new WeakMap<WorkbookSheet, boolean>();

/** Whether a sheet says for all of its amounts what they are in. */
export function saysMass(sheet: WorkbookSheet): boolean {
  const says = known.get(sheet) ?? saysOn(sheet);
  known.set(sheet, says);
  return says;
}
