import type { WorkbookSheet } from "../../../workbook/model";
import { rangesReadHere } from "../../formulas/rangesReadHere";

/** The columns of which a formula reads a single cell in its own row. */
export function readInRow(sheet: WorkbookSheet, row: number, column: number): ReadonlySet<number> {
  const read = rangesReadHere(sheet, { row, column }).filter(
    ({ top, bottom, left, right }) => top === row && bottom === row && left === right,
  );
  return new Set(read.map(({ left }) => left));
}
