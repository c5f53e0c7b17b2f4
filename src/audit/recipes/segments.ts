import type { WorkbookSheet } from "../../workbook/model";
import { isBlank, looksNumeric, textAt } from "./cells";
import type { FinderContext } from "./finderContext";
import { headerRole, type Role } from "./headerRole";
import { isTotalRow } from "./isTotalRow";
import { nameInList } from "./nameInList";

/** Amounts stand at most this far beside the names. */
const REACH_LEFT = 4;
/** Farther left than this only where no column between is empty. */
export const NEAR_LEFT = 2;
const REACH_RIGHT = 12;

/** Labels among ingredients that say something of one: no ingredients themselves. */
const SAID_OF_ONE = new Set<Role>(["molar mass", "moles", "particles", "abv", "ethanol"]);

/** Labels that end a list of ingredients, since what follows are answers. */
const ANSWER_ROLES = new Set<Role>([
  "freezing point",
  "depression",
  "ice fraction",
  "molality",
  "temperature",
  "cryoscopic constant",
  "measured",
  "target",
  "price",
  "composition",
]);

export interface Segment {
  readonly column: number;
  readonly headerRow: number | null;
  readonly rows: readonly number[];
}

/** The cells right of a place, up to the first blank one. */
function cellsBeside(sheet: WorkbookSheet, row: number, column: number): readonly number[] {
  const beside = Array.from({ length: 8 }, (_, at) => column + 1 + at);
  const end = beside.findIndex((at) => isBlank(sheet, row, at));
  return end < 0 ? beside : beside.slice(0, end);
}

/**
 * Whether a row heads a table: two columns and more beside its first word say what they are about, or one says
 * amounts and has a number below.
 */
function isHeaderRow(sheet: WorkbookSheet, row: number, column: number): boolean {
  const beside = cellsBeside(sheet, row, column);
  const roles = beside.map((at) => headerRole(textAt(sheet, row, at)));
  const isOfAmounts = (at: number) =>
    headerRole(textAt(sheet, row, at)) === "amount" && looksNumeric(sheet, row + 1, at);
  const heads = roles.filter((role) => role !== null).length;
  const isHeading = heads >= 2 || beside.some(isOfAmounts);
  return isHeading && beside.every((at) => !looksNumeric(sheet, row, at));
}

/** Cuts a run of words in one column where a header row begins a new list. */
export function segmentsOf(
  sheet: WorkbookSheet,
  column: number,
  rows: readonly number[],
): Segment[] {
  const segments: { column: number; headerRow: number | null; rows: number[] }[] = [
    { column, headerRow: null, rows: [] },
  ];
  for (const row of rows) {
    if (headerRole(textAt(sheet, row, column)) === "name" || isHeaderRow(sheet, row, column))
      segments.push({ column, headerRow: row, rows: [] });
    else segments.at(-1)?.rows.push(row);
  }
  return segments.filter((segment) => segment.rows.length > 0);
}

/** Whether a column beside a list has neither a header nor anything in the rows of the items. */
export const isEmptyBeside = (
  sheet: WorkbookSheet,
  { headerRow }: Segment,
  items: readonly number[],
  column: number,
): boolean =>
  (headerRow === null || isBlank(sheet, headerRow, column)) &&
  items.every((row) => isBlank(sheet, row, column));

/** Whether an empty column lies between a list's names and a column. */
export const isParted = (
  sheet: WorkbookSheet,
  segment: Segment,
  items: readonly number[],
  column: number,
): boolean => {
  const [from, to] = [Math.min(column, segment.column), Math.max(column, segment.column)];
  const between = Array.from({ length: to - from - 1 }, (_, at) => from + 1 + at);
  return between.some((each) => isEmptyBeside(sheet, segment, items, each));
};

/** Columns beside the names that may hold amounts or say more about an ingredient. */
export function columnsBeside({ column }: Segment): number[] {
  const from = Math.max(0, column - REACH_LEFT);
  return Array.from({ length: column + REACH_RIGHT - from + 1 }, (_, at) => from + at).filter(
    (at) => at !== column,
  );
}

/** The header row of a list without a word like "Ingredient": the row above the first amounts, if it has words. */
export function guessedHeader(sheet: WorkbookSheet, segment: Segment): Segment {
  const beside = columnsBeside(segment).filter(
    (at) => !isParted(sheet, { ...segment, headerRow: null }, segment.rows, at),
  );
  const hasNumber = (row: number) => beside.some((column) => looksNumeric(sheet, row, column));
  const first = segment.rows.findIndex(hasNumber);
  if (first < 0) return segment;
  const firstRow = segment.rows[first] ?? 0;
  const above = firstRow - 1;
  const hasWords = beside.some((column) => textAt(sheet, above, column) !== "");
  return { ...segment, headerRow: hasWords ? above : null, rows: segment.rows.slice(first) };
}

interface Items {
  readonly items: readonly number[];
  readonly totals: readonly number[];
}

const isKnownName = ({ check }: FinderContext, text: string): boolean =>
  check(nameInList(text, check).item).kind !== "unknown";

/** Cuts a list at its totals and blank rows, and ends it where answers begin. */
function groupsOf(context: FinderContext, segment: Segment): Items[] {
  const { sheet } = context;
  const { rows, column } = segment;
  const groups: { items: number[]; totals: number[] }[] = [{ items: [], totals: [] }];
  let previous: number | null = null;
  for (const row of rows) {
    const text = textAt(sheet, row, column);
    const isKnown = isKnownName(context, text);
    const role = isKnown ? null : headerRole(text);
    if (role !== null && ANSWER_ROLES.has(role)) break;
    if (role !== null && SAID_OF_ONE.has(role)) {
      previous = row;
      continue;
    }
    const last = groups.at(-1);
    const isCut = (previous !== null && row > previous + 1) || (last?.totals.length ?? 0) > 0;
    previous = row;
    if (!isKnown && (role === "total" || isTotalRow(sheet, segment, row))) last?.totals.push(row);
    else if (isCut) groups.push({ items: [row], totals: [] });
    else last?.items.push(row);
  }
  return groups;
}

/**
 * The ingredients and totals of a list. What follows a blank row or a total belongs to it only while most of
 * its names are known: yields, rents and notes stand there too.
 */
export function itemsAndTotals(context: FinderContext, segment: Segment): Items {
  const { sheet } = context;
  const [first = { items: [], totals: [] }, ...more] = groupsOf(context, segment);
  const items = [...first.items];
  const totals = [...first.totals];
  for (const group of more) {
    const known = group.items.filter((row) =>
      isKnownName(context, textAt(sheet, row, segment.column)),
    );
    if (known.length * 2 < group.items.length || (known.length === 0 && group.totals.length === 0))
      break;
    items.push(...group.items);
    totals.push(...group.totals);
  }
  return { items, totals };
}
