import type { WorkbookSheet } from "../../workbook/model";
import { amountText } from "./amounts/amountText";
import { cleanText } from "./headings/cleanText";

/** The words in a cell as `cleanText` reads them; "" when it holds none. */
export function textAt(sheet: WorkbookSheet, row: number, column: number): string {
  if (row < 0 || column < 0) return "";
  const value = sheet.cellAt(row, column)?.value;
  return typeof value === "string" ? cleanText(value) : "";
}

/** Whether a cell holds a number, be it typed as text. */
export function looksNumeric(sheet: WorkbookSheet, row: number, column: number): boolean {
  if (row < 0 || column < 0) return false;
  const value = sheet.cellAt(row, column)?.value;
  return typeof value === "number" || (typeof value === "string" && amountText(value) !== null);
}

/** Whether a cell holds an error: a number stood there, or would. */
export function isErrorAt(sheet: WorkbookSheet, row: number, column: number): boolean {
  const value = row < 0 || column < 0 ? null : (sheet.cellAt(row, column)?.value ?? null);
  return typeof value === "object" && value !== null;
}

/** Whether a cell holds a number, or an error where one should be. */
export function holdsNumber(sheet: WorkbookSheet, row: number, column: number): boolean {
  return looksNumeric(sheet, row, column) || isErrorAt(sheet, row, column);
}

export const isBlank = (sheet: WorkbookSheet, row: number, column: number): boolean => {
  const value = row < 0 || column < 0 ? null : (sheet.cellAt(row, column)?.value ?? null);
  return value === null || (typeof value === "string" && value.trim() === "");
};
