import type { Cell, Matrix } from "../../foundation/cell";
import { badInput } from "../../foundation/problem";
import type { CellRange, WorkbookSheet, WorkbookValue } from "../../workbook/model";
import { plainWords } from "./headings/plainWords";
import { sheetTexts } from "./sheetTexts";

/** A range of the user's own that is led by headers, ready to be handed to a worksheet function. */
export interface HeadedRange {
  readonly sheet: WorkbookSheet;
  readonly range: CellRange;
  /** The first row in plain words. */
  readonly headers: readonly string[];
  /** The cells, headers first. */
  readonly matrix: Matrix;
}

const wordsAt = (sheet: WorkbookSheet, row: number, column: number): string => {
  const value = sheet.cellAt(row, column)?.value;
  return typeof value === "string" ? plainWords(value) : "";
};

/** Reads as far to both sides as there are headers: the name may stand anywhere among them. */
function headersAround(sheet: WorkbookSheet, row: number, column: number) {
  const isHeader = (at: number) => typeof sheet.cellAt(row, at)?.value === "string";
  let left = column;
  let right = column;
  while (left > 0 && isHeader(left - 1)) left -= 1;
  while (isHeader(right + 1)) right += 1;
  return { left, right };
}

const asCell = (value: WorkbookValue): Cell =>
  typeof value === "object" && value !== null ? badInput(value.error) : value;

const matrixOf = (sheet: WorkbookSheet, { top, left, bottom, right }: CellRange): Matrix =>
  Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (_, c) =>
      asCell(sheet.cellAt(top + r, left + c)?.value ?? null),
    ),
  );

function rangeAt(sheet: WorkbookSheet, row: number, column: number): HeadedRange | null {
  const { left, right } = headersAround(sheet, row, column);
  let bottom = row;
  while (typeof sheet.cellAt(bottom + 1, column)?.value === "string") bottom += 1;
  if (bottom === row) return null;
  const range = { top: row, left, bottom, right };
  const headers = Array.from({ length: right - left + 1 }, (_, at) =>
    wordsAt(sheet, row, left + at),
  );
  return { sheet, range, headers, matrix: matrixOf(sheet, range) };
}

/** Every range of a sheet with a header "name", down to its first row without a name. */
export function headedRanges(sheet: WorkbookSheet): HeadedRange[] {
  return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns
      .filter((column) => wordsAt(sheet, row, column) === "name")
      .flatMap((column) => rangeAt(sheet, row, column) ?? []),
  );
}
