import type { WorkbookValue } from "../workbook/model";

/** Programs round what they store, some to three or four digits; a thousandth changes no answer. */
const RELATIVE = 1e-3;
const ABSOLUTE = 1e-9;

/** A reference to a blank cell is 0 in one spreadsheet and blank in another; TRUE counts as 1. */
function plain(value: WorkbookValue): string | number {
  if (value === null || value === "") return 0;
  if (typeof value === "boolean") return Number(value);
  return typeof value === "object" ? value.error : value;
}

/** Whether two values of a cell are the same but for the last digits. */
export function isSameValue(one: WorkbookValue, other: WorkbookValue): boolean {
  const [a, b] = [plain(one), plain(other)];
  if (typeof a !== "number" || typeof b !== "number") return a === b;
  return Math.abs(a - b) <= Math.max(ABSOLUTE, RELATIVE * Math.max(Math.abs(a), Math.abs(b)));
}

/** A value in words for a sentence: numbers to six digits, texts in quotes. */
export function shortValue(value: WorkbookValue): number | string {
  if (value === null) return "nothing";
  if (typeof value === "number") return Number(value.toPrecision(6));
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "object" ? value.error : `"${value.slice(0, 40)}"`;
}
