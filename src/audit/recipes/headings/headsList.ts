import type { WorkbookSheet } from "../../../workbook/model";
import { looksNumeric, textAt } from "../cells";
import { headerRole } from "./headerRole";
import { sheetTexts } from "../sheetTexts";
import { unitFromWord } from "../amounts/unit";

/** Whether a row heads a list that was not read as one: words about amounts, and no number. */
export function headsList(sheet: WorkbookSheet, row: number): boolean {
  const texts = (sheetTexts(sheet).columnsByRow.get(row) ?? []).map((column) => ({
    column,
    text: textAt(sheet, row, column),
  }));
  const isHeading = ({ text }: { text: string }) =>
    unitFromWord(text) !== null || headerRole(text) === "amount";
  return (
    texts.length >= 2 &&
    texts.some(isHeading) &&
    texts.every(({ column }) =>
      [column - 1, column + 1].every((beside) => !looksNumeric(sheet, row, beside)),
    )
  );
}
