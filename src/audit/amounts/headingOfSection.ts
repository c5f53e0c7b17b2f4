import type { WorkbookSheet } from "../../workbook/model";
import { holdsNumber, textAt } from "../recipes/cells";
import { nextColumn } from "../recipes/nextFilled";
import type { Place } from "../recipes/recipeBlock";

/** Lines of words and numbers go on at most so far below the words that head them. */
const MOST_LINES = 30;

interface Heading {
  /** Its row. */
  readonly top: number;
  readonly words: string;
}

/** The words that stand alone right above the lines of labels and numbers to which a label belongs; "" for none. */
export function headingOfSection(sheet: WorkbookSheet, { row, column }: Place): Heading {
  let top = row - 1;
  const next = () => nextColumn(sheet, top, column);
  const isLine = () => textAt(sheet, top, column) !== "" && holdsNumber(sheet, top, next());
  while (top > row - MOST_LINES && isLine()) top -= 1;
  return { top, words: textAt(sheet, top, next()) === "" ? textAt(sheet, top, column) : "" };
}
