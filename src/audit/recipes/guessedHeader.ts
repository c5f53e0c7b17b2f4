import type { WorkbookSheet } from "../../workbook/model";
import { holdsNumber, textAt } from "./cells";
import { headerRole } from "./headings/headerRole";
import { nextRow } from "./nextFilled";
import { isParted } from "./isParted";
import { columnsBeside, type Segment } from "./segments";

/** Whether a row with others free under it heads columns: it says what one is about, or has words over several. */
function headsOverRoom(sheet: WorkbookSheet, row: number, columns: readonly number[]): boolean {
  const texts = columns.map((column) => textAt(sheet, row, column)).filter((text) => text !== "");
  const isOfNumber = columns.some((column) => holdsNumber(sheet, row, column));
  return !isOfNumber && (texts.length > 2 || texts.some((text) => headerRole(text) === "amount"));
}

/** The columns beside a list up to an empty one; where none of them has a number, up to the next behind one that is free. */
function columnsWithNumbers(sheet: WorkbookSheet, segment: Segment): readonly number[] {
  const { rows, column } = segment;
  const from = (names: number) =>
    columnsBeside(segment).filter(
      (at) => !isParted(sheet, { ...segment, headerRow: null, column: names }, rows, at),
    );
  const near = from(column);
  const hasNumber = rows.some((row) => near.some((at) => holdsNumber(sheet, row, at)));
  return hasNumber ? near : from(column + 1).filter((at) => at > column);
}

/** The header row of a list without a word like "Ingredient": the row above the first amounts, if it has words. */
export function guessedHeader(sheet: WorkbookSheet, segment: Segment): Segment {
  const beside = columnsWithNumbers(sheet, segment);
  const hasNumber = (row: number) => beside.some((column) => holdsNumber(sheet, row, column));
  const first = segment.rows.findIndex(hasNumber);
  if (first < 0) return segment;
  const firstRow = segment.rows[first] ?? 0;
  const columns = [...beside, segment.column];
  const above = nextRow(sheet, firstRow, columns, -1);
  const hasWords = beside.some((column) => textAt(sheet, above, column) !== "");
  const heads = hasWords && (above === firstRow - 1 || headsOverRoom(sheet, above, columns));
  return { ...segment, headerRow: heads ? above : null, rows: segment.rows.slice(first) };
}
