import { parseRangeName, rangeName } from "../../src/workbook/address";
import type { CellRange, Workbook, WorkbookTable } from "../../src/workbook/model";

/** Where a formula stands: references without a sheet, and [@column], are read from there. */
export interface Home {
  readonly sheet: string;
  readonly row: number;
}

export interface SheetAddress {
  readonly sheet: string;
  /** A1 without dollar signs. */
  readonly address: string;
}

const PARTS = /^(?:('(?:[^']|'')+'|[^!']+)!)?(.+)$/s;

/** "'My ices'!$B$2:$C$9" as sheet and address; null when it is not made of cells. */
export function cellsOf(reference: string, { sheet: home }: Home): SheetAddress | null {
  const [, quoted, given = ""] = PARTS.exec(reference) ?? [];
  const range = parseRangeName(given.replace(/#$/, ""));
  if (range === null) return null;
  const sheet = quoted?.startsWith("'") ? quoted.slice(1, -1).replace(/''/g, "'") : quoted;
  return { sheet: sheet ?? home, address: rangeName(range) };
}

/** The rows of a table that "[#All]", "[#Headers]", "[@…]" or nothing of the kind means. */
function rowsOf({ range, hasTotals }: WorkbookTable, inside: string, row: number) {
  const [first, last] = [range.top + 1, range.bottom - (hasTotals ? 1 : 0)];
  if (/#all/i.test(inside)) return { top: range.top, bottom: range.bottom };
  if (/#headers/i.test(inside)) return { top: range.top, bottom: range.top };
  if (/@|#this row/i.test(inside)) return { top: row, bottom: row };
  return { top: first, bottom: last };
}

function columnsOf({ range, columns }: WorkbookTable, inside: string) {
  const bare = inside.replace(/^\[|\]$/g, "").replace(/^@\[?|\]$/g, "");
  const asked = [bare, ...[...inside.matchAll(/\[([^[\]#@][^[\]]*)\]/g)].map(([, name]) => name)];
  const places = asked.flatMap((name) => {
    const at = columns.findIndex((column) => column.toLowerCase() === name?.trim().toLowerCase());
    return at < 0 ? [] : [range.left + at];
  });
  return places.length === 0
    ? { left: range.left, right: range.right }
    : { left: Math.min(...places), right: Math.max(...places) };
}

/** The cells that a name or a table's reference stands for; null when the workbook has none of that name. */
export function cellsNamed(
  reference: string,
  home: Home,
  { names, sheets }: Pick<Workbook, "names" | "sheets">,
): SheetAddress | null {
  const [, word = "", inside = ""] = /^([^[]+)(\[.*\])?$/s.exec(reference) ?? [];
  const named = names.find(({ name }) => name.toLowerCase() === word.toLowerCase());
  if (named !== undefined) return cellsOf(named.refersTo, home);
  for (const sheet of sheets) {
    const table = sheet.tables.find(({ name }) => name.toLowerCase() === word.toLowerCase());
    if (table === undefined) continue;
    const range: CellRange = { ...rowsOf(table, inside, home.row), ...columnsOf(table, inside) };
    return { sheet: sheet.name, address: rangeName(range) };
  }
  return null;
}
