import type { WorkbookSheet } from "../../../workbook/model";
import { contains } from "../../../workbook/references";
import { rangesReadHere } from "../../formulas/rangesReadHere";

/** Whether the amounts of a list are worked out from a column of units and what stands beside it: then they are in a unit of their own. */
export function areConverted(
  sheet: WorkbookSheet,
  rows: readonly number[],
  amounts: readonly number[],
  units: number,
): boolean {
  const inMost = (isSo: (row: number) => boolean) => rows.filter(isSo).length * 2 > rows.length;
  const isWorkedOut = (column: number) =>
    inMost((row) => sheet.cellAt(row, column)?.formula !== undefined);
  const readsUnits = (column: number) =>
    inMost((row) =>
      rangesReadHere(sheet, { row, column }).some((range) => contains(range, row, units)),
    );
  return amounts.every(isWorkedOut) && amounts.some(readsUnits);
}
