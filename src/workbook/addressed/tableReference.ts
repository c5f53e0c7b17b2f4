import { columnName } from "../address";
import type { WorkbookTable } from "../model";

/** The text in brackets behind a table's name, or alone inside of the table; ' takes the next sign as it is. */
export const BRACKETS = String.raw`\[(?:'.|[^\[\]']|\[(?:'.|[^\[\]'])*\])*\]`;

const INNER = /\[((?:'.|[^[\]'])*)\]/gsu;

const plain = (name: string): string => name.replaceAll(/'(.)/gsu, "$1").toLowerCase();

/** What brackets ask for: a part of the table such as "#totals", and columns by name. */
function asked(brackets: string): { part: string; columns: string[] } {
  const inside = brackets.slice(1, -1);
  const isOwnRow = inside.startsWith("@");
  const text = isOwnRow ? inside.slice(1) : inside;
  const items = text.startsWith("[") ? [...text.matchAll(INNER)].map(([, item]) => item) : [text];
  const names = items.map((item = "") => item.trim()).filter((item) => item !== "");
  const parts = names.filter((name) => name.startsWith("#")).map((name) => name.toLowerCase());
  return {
    part: isOwnRow ? "#this row" : parts.join(" "),
    columns: names.filter((name) => !name.startsWith("#")).map(plain),
  };
}

/** Rows of a part of a table, first and last; null for its own row, undefined for parts not known. */
function rowsOf(
  { range, hasTotals }: WorkbookTable,
  part: string,
): [number, number] | null | undefined {
  const last = range.bottom - Number(hasTotals);
  if (part === "#this row") return null;
  if (part === "" || part === "#data") return [range.top + 1, last];
  if (part === "#all") return [range.top, range.bottom];
  if (part === "#headers") return [range.top, range.top];
  return part === "#totals" && hasTotals ? [range.bottom, range.bottom] : undefined;
}

/** Stands for the number of the formula's own row in an address. */
export const OWN_ROW = "\0";

/**
 * The address that a reference to a table stands for, with OWN_ROW where it is in the formula's own row; null where
 * the table has no such column or part. Whole columns stay when the formula is copied, cells of its own row move.
 */
export function addressInTable(table: WorkbookTable, brackets: string): string | null {
  const { part, columns } = asked(brackets);
  const names = table.columns.map((name) => name.toLowerCase());
  const places = columns.map((name) => names.indexOf(name));
  const rows = rowsOf(table, part);
  if (rows === undefined || places.includes(-1)) return null;
  const { left, right } = table.range;
  const [from, to] =
    places.length === 0 ? [left, right] : [left + Math.min(...places), left + Math.max(...places)];
  const cell = (column: number, row: number | undefined) =>
    row === undefined ? `${columnName(column)}${OWN_ROW}` : `$${columnName(column)}$${row + 1}`;
  const start = cell(from, rows?.[0]);
  const end = cell(to, rows?.[1]);
  return start === end ? start : `${start}:${end}`;
}
