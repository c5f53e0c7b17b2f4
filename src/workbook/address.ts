import type { CellRange } from "./model";

/** Bounds of a sheet in the file format (ECMA-376 part 1, 18.3.1.73 and practice of all spreadsheets). */
export const MAX_ROWS = 1048576;
export const MAX_COLUMNS = 16384;

/** Column letters of a zero-based column: 0 → "A", 26 → "AA". */
export function columnName(column: number): string {
  let name = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
  }
  return name;
}

/** Zero-based column of its letters, in any case: "AA" → 26. */
export function columnIndex(letters: string): number {
  let index = 0;
  // 31 leaves of a letter's code what A and a have in common. By code, as a large file names millions of cells.
  for (let at = 0; at < letters.length; at += 1) index = index * 26 + (letters.charCodeAt(at) & 31);
  return index - 1;
}

/** A1 address of a zero-based place. */
export const cellName = (row: number, column: number): string => `${columnName(column)}${row + 1}`;

/** A1 address of a range; a single cell is written as one. */
export function rangeName({ top, left, bottom, right }: CellRange): string {
  const first = cellName(top, left);
  return top === bottom && left === right ? first : `${first}:${cellName(bottom, right)}`;
}

const [DOLLAR, A, Z, ZERO, NINE] = [36, 65, 90, 48, 57];
const [MOST_LETTERS, MOST_DIGITS] = [3, 7];

/**
 * Zero-based place of an A1 address, dollar signs allowed; null when it is none or beyond the sheet. By codes, as a
 * large workbook names millions of cells.
 */
export function parseCellName(address: string): { row: number; column: number } | null {
  let at = address.charCodeAt(0) === DOLLAR ? 1 : 0;
  const letters = at;
  let column = 0;
  for (; at < address.length && at - letters < MOST_LETTERS; at += 1) {
    const code = address.charCodeAt(at) & ~32;
    if (code < A || code > Z) break;
    column = column * 26 + code - A + 1;
  }
  if (at === letters) return null;
  if (address.charCodeAt(at) === DOLLAR) at += 1;
  const digits = at;
  let row = 0;
  for (; at < address.length && at - digits < MOST_DIGITS; at += 1) {
    const code = address.charCodeAt(at);
    if (code < ZERO || code > NINE) break;
    row = row * 10 + code - ZERO;
  }
  const isWhole = at > digits && at === address.length;
  return isWhole && row >= 1 && row <= MAX_ROWS && column <= MAX_COLUMNS
    ? { row: row - 1, column: column - 1 }
    : null;
}

/** Zero-based range of "A1" or "A1:B9"; null when it is none. */
export function parseRangeName(address: string): CellRange | null {
  const [first = "", second = first, ...more] = address.split(":");
  const [from, to] = [parseCellName(first), parseCellName(second)];
  if (from === null || to === null || more.length > 0) return null;
  return {
    top: Math.min(from.row, to.row),
    left: Math.min(from.column, to.column),
    bottom: Math.max(from.row, to.row),
    right: Math.max(from.column, to.column),
  };
}
