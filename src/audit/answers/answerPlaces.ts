import type { WorkbookSheet } from "../../workbook/model";
import { carriesUnit } from "../amounts/inputLabel";
import { isBlank, textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { isBound } from "./isBound";
import { isExplanation } from "./isExplanation";
import { isToldInWords } from "./isToldInWords";
import { isUnit } from "./isUnit";
import { isAnswer } from "./labelledAnswer";

/** Answers stand at most this far beside their label. */
const REACH_BESIDE = 4;
/** Or so far before it. */
const REACH_BEFORE = 2;

/** Words that begin with the unit of the number before them: "−2.7 | °C is where it starts to freeze". */
const UNIT_AND_MORE = /^(\S+)\s+\S/;

/** The number right before a label that goes on with its unit. */
function placeOfUnit(sheet: WorkbookSheet, { row, column }: Place): Place | null {
  const text = textAt(sheet, row, column);
  const [, first = ""] = UNIT_AND_MORE.exec(text) ?? [];
  // With words left of the number they are only the rest of its label.
  if (!isUnit(first) || isUnit(text) || textAt(sheet, row, column - 2) !== "") return null;
  const isBefore = isAnswer(sheet, row, column - 1) && isBlank(sheet, row, column + 1);
  return isBefore ? { row, column: column - 1 } : null;
}

/**
 * The answer that belongs to a free label: the one before its unit, else the first one to its right, else one below
 * it, else one left of it.
 */
export function firstAnswerPlace(sheet: WorkbookSheet, { row, column }: Place): Place | null {
  const before = placeOfUnit(sheet, { row, column });
  if (before !== null) return before;
  const below = placeBelow(sheet, { row, column });
  if (below !== null && isHeading(sheet, { row, column: column - 1 })) return below;
  for (let at = column + 1; at <= column + REACH_BESIDE; at += 1) {
    const place = { row, column: at };
    if (isAnswer(sheet, row, at) && !isBound(sheet, place)) return place;
    const text = textAt(sheet, row, at);
    if (isToldInWords(textAt(sheet, row, column), text)) return null;
    // Behind other words stands their number, where this label has one below it.
    const isLabel = text.length > 8 || (below !== null && text !== "" && !isUnit(text));
    if (isLabel && !isExplanation(sheet, place)) break;
  }
  return below ?? placeBefore(sheet, { row, column });
}

/** Whether words stand over a number: then what stands right of the last of such headings is another table's. */
const isHeading = (sheet: WorkbookSheet, { row, column }: Place): boolean =>
  textAt(sheet, row, column) !== "" && isAnswer(sheet, row + 1, column);

/** The only number left of a label that nothing stands right of, and no other label before. */
function placeBefore(sheet: WorkbookSheet, { row, column }: Place): Place | null {
  const before = Array.from({ length: column }, (_, at) => at).filter(
    (at) => !isBlank(sheet, row, at),
  );
  const [only, ...more] = before;
  const isOne = only !== undefined && more.length === 0 && column - only <= REACH_BEFORE;
  return isOne && isBlank(sheet, row, column + 1) && isAnswer(sheet, row, only)
    ? { row, column: only }
    : null;
}

/** So many numbers of a row may stand between its label and one of them. */
const REACH_IN_ROW = 12;

/** The words left of a number, where nothing but numbers and blanks stand between. */
function labelOfRow(sheet: WorkbookSheet, { row, column }: Place): string {
  for (let at = column - 1; at >= Math.max(0, column - REACH_IN_ROW); at -= 1) {
    const text = textAt(sheet, row, at);
    if (text !== "") return text;
  }
  return "";
}

/** Whether a number below a heading is that one's: no label with a unit of its own stands left of it. */
const isOfHeading = (sheet: WorkbookSheet, place: Place): boolean =>
  isAnswer(sheet, place.row, place.column) && !carriesUnit(labelOfRow(sheet, place));

/** One number below its label, in a row of such labels: answers may stand across a row. */
function placeBelow(sheet: WorkbookSheet, { row, column }: Place): Place | null {
  const beside = [column - 1, column + 1].some((at) => textAt(sheet, row, at) !== "");
  const isOne =
    isOfHeading(sheet, { row: row + 1, column }) && !isOfHeading(sheet, { row: row + 2, column });
  return beside && isOne ? { row: row + 1, column } : null;
}

/** The longest row or column of answers behind one label. */
const MOST_ANSWERS = 60;

/** One row between headings and their numbers may say something of other columns: marks that can be had. */
const isSkipped = (sheet: WorkbookSheet, { row, column }: Place): boolean =>
  isBlank(sheet, row, column) && sheetTexts(sheet).columnsByRow.has(row);

/** The numbers that go on behind the first answer of a label: right of it, or below it where it is a heading. */
export function furtherAnswerPlaces(
  sheet: WorkbookSheet,
  label: Place,
  first: Place | null,
): Place[] {
  const isRight = first !== null && first.row === label.row && first.column > label.column;
  const below = { row: label.row + 1, column: label.column };
  const from = isRight ? first : isSkipped(sheet, below) ? below : label;
  const places: Place[] = [];
  for (let away = 1; away <= MOST_ANSWERS; away += 1) {
    const at = isRight
      ? { row: from.row, column: from.column + away }
      : { row: from.row + away, column: from.column };
    const goesOn = isRight ? isAnswer(sheet, at.row, at.column) : isOfHeading(sheet, at);
    if (!goesOn) break;
    places.push(at);
  }
  return isRight || places.length > 1 ? places : [];
}
