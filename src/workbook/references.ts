import { remembered } from "../foundation/remembered";
import { MAX_COLUMNS, MAX_ROWS, parseRangeName } from "./address";
import type { CellRange } from "./model";

/** A range that a formula reads; `sheet` is null for the formula's own. */
export interface Reference {
  readonly sheet: string | null;
  readonly range: CellRange;
}

const REFERENCE =
  /"(?:[^"]|"")*"|(?:('(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?(?<![\p{L}\p{N}_.])(\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?|\$?[A-Z]{1,3}:\$?[A-Z]{1,3})(?![\p{L}\p{N}_(!])/giu;

function rangeOf(text: string): CellRange | null {
  if (/\d/.test(text)) return parseRangeName(text);
  const [first = "", second = first] = text.replaceAll("$", "").split(":");
  const columns = parseRangeName(`${first}1:${second}${MAX_ROWS}`);
  return columns === null || columns.right >= MAX_COLUMNS ? null : columns;
}

/** Many rules ask of the formulas of a workbook; of a ledger's each asks of the formula before it several times in a row. */
const FORMULAS_KEPT = 500;

/** The cells and ranges a formula names; those in other workbooks and in names are left out. */
export const referencesOf: (formula: string) => readonly Reference[] = remembered(
  FORMULAS_KEPT,
  referencesIn,
);

function referencesIn(formula: string): Reference[] {
  return [...formula.matchAll(REFERENCE)].flatMap(([, sheet, address]) => {
    const range = address === undefined ? null : rangeOf(address);
    if (range === null) return [];
    const name = sheet?.startsWith("'") === true ? sheet.slice(1, -1).replaceAll("''", "'") : sheet;
    return name?.includes("[") === true ? [] : [{ sheet: name ?? null, range }];
  });
}

export const contains = (
  { top, left, bottom, right }: CellRange,
  row: number,
  column: number,
): boolean => row >= top && row <= bottom && column >= left && column <= right;

/** Whether two ranges have a cell in common. */
export const overlaps = (a: CellRange, b: CellRange): boolean =>
  a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
