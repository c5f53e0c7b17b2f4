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

const CELL = /^\$?[A-Z]{1,3}\$?[0-9]{1,7}$/i;

/** Zero-based place of an A1 address, dollar signs allowed; null when it is none or beyond the sheet. */
export function parseCellName(address: string): { row: number; column: number } | null {
  if (!CELL.test(address)) return null;
  let [row, column] = [0, 0];
  for (let at = 0; at < address.length; at += 1) {
    const code = address.charCodeAt(at);
    if (code > 64) column = column * 26 + (code & 31);
    else if (code !== 36) row = row * 10 + code - 48;
  }
  return row > 0 && row <= MAX_ROWS && column <= MAX_COLUMNS
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
