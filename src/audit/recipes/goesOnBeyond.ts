import type { WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import { rangesReadHere } from "../formulas/rangesReadHere";
import { unitFromWord } from "./amounts/unit";
import { holdsNumber, isBlank, looksNumeric, textAt } from "./cells";
import { headerRole, type Role } from "./headings/headerRole";
import type { Segment } from "./segments";

/** What columns of a list are about; beside a list stand logs and notes, too. */
const OF_LISTS = new Set<Role | null>(["amount", "price", "abv", "ethanol", "total"]);
/** Totals and answers follow the lines of a list as soon as this. */
const FOLLOWS = 4;

/** Whether a column right of the names is worked out, line by line, from what stands with them. */
const isWorkedOut = (
  sheet: WorkbookSheet,
  names: number,
  items: readonly number[],
  column: number,
): boolean =>
  items.some((row) =>
    rangesReadHere(sheet, { row, column }).some(
      ({ top, bottom, right }) => top === row && bottom === row && right <= names,
    ),
  );

/** Whether a formula right below the lines, a total or an answer, reads them in a column. */
function isReadBelow(sheet: WorkbookSheet, items: readonly number[], column: number): boolean {
  const [first = 0, last = 0] = [items[0], items.at(-1)];
  return Array.from({ length: FOLLOWS }, (_, at) => last + 1 + at).some((row) =>
    rangesReadHere(sheet, { row, column }).some(
      (range) => range.bottom > range.top && contains(range, first + 1, column),
    ),
  );
}

/** Whether a number with words of its own stands before a place: what is behind it is its unit. */
const isBehindAnswer = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  holdsNumber(sheet, row, column - 1) && textAt(sheet, row, column - 2) !== "";

/** Whether a column holds nothing but units beside the lines, none of them an answer's. */
function isOfUnits(sheet: WorkbookSheet, items: readonly number[], column: number): boolean {
  const filled = items.filter((row) => !isBlank(sheet, row, column));
  const isUnit = (row: number) => unitFromWord(textAt(sheet, row, column)) !== null;
  const isFree = filled.length > 0 && !filled.some((row) => isBehindAnswer(sheet, row, column));
  return isFree && filled.every(isUnit);
}

/**
 * Whether a column behind a free one still belongs to a list: it is worked out from the list or has its units, or it has a
 * heading and numbers, is no other list's, and says what columns of lists say or is added up below the lines.
 */
export function goesOnBeyond(
  sheet: WorkbookSheet,
  { column: names, headerRow }: Segment,
  items: readonly number[],
  column: number,
): boolean {
  if (column < names) return false;
  if (isWorkedOut(sheet, names, items, column) || isOfUnits(sheet, items, column)) return true;
  const heading = headerRow === null ? "" : textAt(sheet, headerRow, column);
  if (heading === "") return false;
  const isWord = (row: number, at: number) =>
    textAt(sheet, row, at) !== "" && !looksNumeric(sheet, row, at);
  const words = (at: number) => items.filter((row) => isWord(row, at)).length;
  const isOther = words(column) > 0 || words(column + 1) * 2 > items.length;
  if (isOther || !items.some((row) => holdsNumber(sheet, row, column))) return false;
  return OF_LISTS.has(headerRole(heading)) || isReadBelow(sheet, items, column);
}
