import { columnIndex, MAX_COLUMNS, MAX_ROWS } from "../workbook/address";
import type { CellRange } from "../workbook/model";

interface Corner {
  readonly row: number | null;
  readonly column: number | null;
}

function parseCorner(text: string): Corner | null {
  const parts = /^\$?([A-Z]{1,3})?\$?([1-9]\d{0,6})?$/i.exec(text);
  if (parts === null || (parts[1] === undefined && parts[2] === undefined)) return null;
  return {
    column: parts[1] === undefined ? null : columnIndex(parts[1]),
    row: parts[2] === undefined ? null : Number(parts[2]) - 1,
  };
}

/** The cells of "B2", "$B$2:H9", "B:C" or "3:5" (without a sheet), or null when it is no address. */
export function parseA1(address: string): CellRange | null {
  const [first = "", last = first, ...more] = address.split(":");
  const from = parseCorner(first);
  const to = parseCorner(last);
  if (from === null || to === null || more.length > 0) return null;
  if ((from.row === null) !== (to.row === null)) return null;
  if ((from.column === null) !== (to.column === null)) return null;
  if (!address.includes(":") && (from.row === null || from.column === null)) return null;
  const rows = [from.row ?? 0, to.row ?? MAX_ROWS - 1];
  const columns = [from.column ?? 0, to.column ?? MAX_COLUMNS - 1];
  const range = {
    top: Math.min(...rows),
    bottom: Math.max(...rows),
    left: Math.min(...columns),
    right: Math.max(...columns),
  };
  return range.bottom >= MAX_ROWS || range.right >= MAX_COLUMNS ? null : range;
}

/** "'Lemon ice'!B2" as sheet and address; the sheet is null when none is named. */
export function splitSheet(reference: string): {
  readonly sheet: string | null;
  readonly address: string;
} {
  const parts = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(reference);
  if (parts === null) return { sheet: null, address: reference };
  return {
    sheet: parts[1]?.replaceAll("''", "'") ?? parts[2] ?? null,
    address: parts[3] ?? "",
  };
}
