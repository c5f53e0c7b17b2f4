import { columnIndex } from "../../../workbook/address";
import type { WorkbookSheet } from "../../../workbook/model";

/** "D6-C6": the scale's reading less that of the empty vessel. */
const LESS = /^\s*\$?([A-Z]{1,3})\$?(\d+)\s*-\s*\$?([A-Z]{1,3})\$?(\d+)\s*$/i;

/** The two columns that were read off a scale, where a cell has their difference in its row; none where it has not. */
function readingsAt(sheet: WorkbookSheet, row: number, column: number): readonly number[] {
  const { formula, value } = sheet.cellAt(row, column) ?? {};
  const [, full, line, empty, other] = LESS.exec(formula ?? "") ?? [];
  if (full === undefined || empty === undefined || line !== other || Number(line) !== row + 1)
    return [];
  const readings = [columnIndex(full), columnIndex(empty)];
  const isTyped = readings.every((at) => {
    const cell = sheet.cellAt(row, at);
    return typeof cell?.value === "number" && cell.formula === undefined;
  });
  return isTyped && typeof value === "number" && value > 0 ? readings : [];
}

/**
 * The columns of a class's table that are readings of a scale with and without what is weighed, whatever they are
 * called: their difference stands beside them.
 */
export const vesselColumns = (
  sheet: WorkbookSheet,
  columns: readonly number[],
  rows: readonly number[],
): readonly number[] =>
  columns.flatMap((column) => {
    const readings = rows.map((row) => readingsAt(sheet, row, column));
    const [first = []] = readings.filter(({ length }) => length > 0);
    const same = readings.filter(
      (each) => each.length > 0 && each.every((at, k) => at === first[k]),
    );
    return same.length * 2 > rows.length ? first : [];
  });
