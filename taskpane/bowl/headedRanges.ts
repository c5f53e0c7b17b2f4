import { rangeName } from "../../src/workbook/address";
import type { Workbook, WorkbookSheet } from "../../src/workbook/model";
import type { OwnRange } from "./ownIngredients";

/** Ranges are looked for in the first rows of each sheet: more would keep a large book waiting. */
export const ROWS_SEARCHED = 2000;

/** Whether a row of lower-case headers heads what is looked for. */
export type HeaderTest = (headers: readonly string[]) => boolean;

const headerAt = (sheet: WorkbookSheet, row: number, column: number): string => {
  const value = sheet.cellAt(row, column)?.value;
  return typeof value === "string" ? value.trim().toLowerCase() : "";
};

/** The last of a run of filled cells, from a place to the right or downward. */
export function runEnd(isFilled: (at: number) => boolean, from: number): number {
  let end = from;
  while (isFilled(end + 1)) end += 1;
  return end;
}

function rangeAt(
  sheet: WorkbookSheet,
  top: number,
  nameColumn: number,
  isHeader: HeaderTest,
): string | null {
  const filled = (column: number) => headerAt(sheet, top, column) !== "";
  let left = nameColumn;
  while (left > 0 && filled(left - 1)) left -= 1;
  const right = runEnd(filled, nameColumn);
  const headers = Array.from({ length: right - left + 1 }, (_, at) =>
    headerAt(sheet, top, left + at),
  );
  if (!isHeader(headers)) return null;
  const bottom = runEnd((row) => headerAt(sheet, row, nameColumn) !== "", top);
  return bottom === top ? null : rangeName({ top, left, bottom, right });
}

/** Every range with a column "name" and headers that pass. */
export function headedRanges(workbook: Workbook, isHeader: HeaderTest): readonly OwnRange[] {
  const found: OwnRange[] = [];
  for (const sheet of workbook.sheets) {
    for (let row = 0; row < Math.min(sheet.rowCount, ROWS_SEARCHED); row += 1) {
      for (let column = 0; column < sheet.columnCount; column += 1) {
        if (headerAt(sheet, row, column) !== "name") continue;
        const address = rangeAt(sheet, row, column, isHeader);
        if (address !== null) found.push({ sheet: sheet.name, address });
      }
    }
  }
  return found;
}
