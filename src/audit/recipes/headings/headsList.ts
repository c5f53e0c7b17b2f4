import type { WorkbookSheet } from "../../../workbook/model";
import { looksNumeric, textAt } from "../cells";
import { partOf } from "../../answers/partLabel";
import { headerRole } from "./headerRole";
import { sheetTexts } from "../sheetTexts";
import { unitFromWord } from "../amounts/unit";

const ANSWERS = new Set(["freezing point", "depression", "molality", "ice fraction"]);

/** Whether words ask for something of a mix, as names of ingredients never do. */
const asksForAnswer = (text: string): boolean =>
  text !== "" && (ANSWERS.has(headerRole(text) ?? "") || partOf(text) !== null);

/** Whether the words of a row ask for what is worked out, and head no ingredients: "Freezes at °C | In solution, g". */
const areQuestions = (texts: readonly string[]): boolean =>
  asksForAnswer(texts[0] ?? "") && texts.every((text) => headerRole(text) !== "name");

/** Whether a row heads a list that was not read as one: words about amounts, no number, and no questions there or below. */
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
    !areQuestions(texts.map(({ text }) => text)) &&
    !asksForAnswer(textAt(sheet, row + 1, texts[0]?.column ?? 0)) &&
    texts.every(({ column }) =>
      [column - 1, column + 1].every((beside) => !looksNumeric(sheet, row, beside)),
    )
  );
}
