import type { WorkbookSheet } from "../../workbook/model";
import { holdsNumber, isBlank, textAt } from "./cells";
import { headerRole } from "./headings/headerRole";
import { unitFromWord } from "./amounts/unit";
import { isRowOfUnits } from "./isRowOfUnits";
import { nextColumn, nextRow } from "./nextFilled";

/** Amounts stand at most this far beside the names. */
const REACH_LEFT = 4;
/** Farther left than this only where no column between is empty. */
export const NEAR_LEFT = 2;
const REACH_RIGHT = 12;

export interface Segment {
  readonly column: number;
  readonly headerRow: number | null;
  readonly rows: readonly number[];
  /** True where its header heads another list above it, too. */
  readonly isContinued?: boolean;
  /** True where it says the recipes of that other list again, in another amount. */
  readonly isAgain?: boolean;
  /** Which of several recipes it is, by the words left of its names. */
  readonly title?: string;
  /** The empty column behind which another list stands, be there numbers in it. */
  readonly end?: number;
}

/** The cells right of a place, up to the first blank one, or to a label with its number: answers beside a list. */
function cellsBeside(sheet: WorkbookSheet, row: number, column: number): readonly number[] {
  const next = nextColumn(sheet, row, column);
  // A column left free beside the names is free in the row below, too.
  const first = isBlank(sheet, nextRow(sheet, row, [column, next]), column + 1) ? next : column + 1;
  const beside = Array.from({ length: 8 }, (_, at) => first + at);
  const blank = beside.findIndex((at) => isBlank(sheet, row, at));
  const number = beside.findIndex((at) => holdsNumber(sheet, row, at));
  const end = number >= 2 && (blank < 0 || number < blank) ? number - 1 : blank;
  return end < 0 ? beside : beside.slice(0, end);
}

/** What the titles of recipes are meant for may stand between them and their numbers. */
const MOST_BETWEEN = 3;

/** The first row below titles whose words are no aims. */
function rowBelowTitles(sheet: WorkbookSheet, row: number, cells: readonly number[]): number {
  const isAim = (at: number) => headerRole(textAt(sheet, at, cells[0] ?? 0)) === "target";
  let below = nextRow(sheet, row, cells);
  while (below <= row + MOST_BETWEEN && isAim(below)) below = nextRow(sheet, below, cells);
  return below;
}

/** A recipe may have nothing of so many ingredients of a list that several share. */
const MOST_WITHOUT = 20;

/** Whether the first thing below a title is a number, though its recipe has nothing of the first ingredients. */
function hasNumberBelow(sheet: WorkbookSheet, row: number, column: number): boolean {
  const rows = Array.from({ length: MOST_WITHOUT }, (_, at) => row + at);
  const first = rows.find((at) => !isBlank(sheet, at, column));
  return first !== undefined && holdsNumber(sheet, first, column);
}

/**
 * Whether a row after an empty one has words only, and a number below each but the first, right below for one of
 * them: titles of recipes. A column that its heading explains, of prices, may have none there.
 */
function isOfTitles(sheet: WorkbookSheet, row: number, cells: readonly number[]): boolean {
  const others = cells.slice(1);
  if (others.length < 2 || !cells.every((at) => isBlank(sheet, row - 1, at))) return false;
  const below = rowBelowTitles(sheet, row, cells);
  if (!others.some((at) => holdsNumber(sheet, below, at))) return false;
  const titles = others.filter((at) => hasNumberBelow(sheet, below, at));
  const isSaid = (at: number) =>
    isBlank(sheet, below, at) && headerRole(textAt(sheet, row, at)) !== null;
  return titles.length > 1 && others.every((at) => titles.includes(at) || isSaid(at));
}

/** Whether a row has the heading of units over a unit, and behind it titles of recipes with a number below one. */
function isOfUnitAndTitles(sheet: WorkbookSheet, row: number, cells: readonly number[]): boolean {
  const [unit, ...titles] = cells;
  const below = nextRow(sheet, row, cells);
  return (
    unit !== undefined &&
    headerRole(textAt(sheet, row, unit)) === "unit" &&
    unitFromWord(textAt(sheet, below, unit)) !== null &&
    titles.some((at) => holdsNumber(sheet, below, at))
  );
}

/**
 * Whether a row heads a table: two columns and more beside its first word say what they are about, one, on either
 * side, says amounts and has a number below, or all are titles, be it behind the heading of units.
 */
function isHeaderRow(sheet: WorkbookSheet, row: number, column: number): boolean {
  const beside = cellsBeside(sheet, row, column);
  // Where amounts stand left of the names, a line may have nothing but words right of them.
  if ([column - 1, ...beside].some((at) => holdsNumber(sheet, row, at))) return false;
  const roles = beside.map((at) => headerRole(textAt(sheet, row, at)));
  const first = nextRow(sheet, row, [column, ...beside]);
  const isOfAmounts = (at: number) =>
    headerRole(textAt(sheet, row, at)) === "amount" && holdsNumber(sheet, first, at);
  const heads = roles.filter((role) => role !== null).length;
  const left = [column - 1, column - 2].filter((at) => at >= 0);
  return (
    heads >= 2 ||
    [...left, ...beside].some(isOfAmounts) ||
    isOfUnitAndTitles(sheet, row, beside) ||
    isOfTitles(sheet, row, [column, ...beside])
  );
}

/** The row of titles above a heading that has nothing beside it: "Recipe | Lemon | Milk", below it "Ingredient, in %". */
function withTitles(sheet: WorkbookSheet, row: number, column: number): number {
  const isLeft = [column - 1, column - 2].some((at) => !isBlank(sheet, row, at));
  const isAlone = !isLeft && cellsBeside(sheet, row, column).length === 0;
  const titles = isAlone ? cellsBeside(sheet, row - 1, column) : [];
  const isOfWords = titles.every((at) => textAt(sheet, row - 1, at) !== "");
  return titles.length > 0 && isOfWords ? row - 1 : row;
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
    const last = segments.at(-1);
    if (isRowOfUnits(sheet, row, column)) {
      if (last?.rows.at(-1) === row - 1) {
        last.rows.pop();
        segments.push({ column, headerRow: row - 1, rows: [] });
      }
    } else if (headerRole(textAt(sheet, row, column)) === "name" || isHeaderRow(sheet, row, column))
      segments.push({ column, headerRow: withTitles(sheet, row, column), rows: [] });
    else last?.rows.push(row);
  }
  return segments.filter((segment) => segment.rows.length > 0);
}

/** In a list of so many items and more a single text beside one of them is a remark. */
const LEAST_WITH_REMARK = 3;

/** Whether a column beside a list has neither a header nor anything in the rows of the items but one remark. */
export function isEmptyBeside(
  sheet: WorkbookSheet,
  { headerRow }: Segment,
  items: readonly number[],
  column: number,
): boolean {
  if (headerRow !== null && !isBlank(sheet, headerRow, column)) return false;
  const [only, ...more] = items.filter((row) => !isBlank(sheet, row, column));
  if (only === undefined) return true;
  const isText = typeof sheet.cellAt(only, column)?.value === "string";
  return more.length === 0 && items.length >= LEAST_WITH_REMARK && isText;
}

/** Columns beside the names that may hold amounts or say more about an ingredient. */
export function columnsBeside({ column, end = column + REACH_RIGHT + 1 }: Segment): number[] {
  const from = Math.max(0, column - REACH_LEFT);
  return Array.from({ length: end - from }, (_, at) => from + at).filter((at) => at !== column);
}
