import { eachFormula } from "../../workbook/eachFormula";
import type { CellRange, WorkbookCell, WorkbookSheet } from "../../workbook/model";
import { moveFormula } from "../../workbook/moveFormula";
import { contains, overlaps } from "../../workbook/references";
import type { AuditContext } from "../context";
import { rangeOfAll } from "../formulas/sumFormulas";
import { rangesReadHere } from "../formulas/rangesReadHere";
import { sumOfRange } from "../formulas/sumOfRange";
import type { Place } from "../recipes/recipeBlock";
import type { FilledTotal } from "./filledTotals";
import { totalElsewhere } from "./totalElsewhere";
import type { Summand } from "./totalledLines";

const LEAST_SUMMANDS = 2;
const MOST_SUMMANDS = 400;

interface LineSum extends Place {
  readonly formula: string;
  readonly range: CellRange;
}

const lineOf = ({ range: { left, right, top } }: LineSum): string =>
  left === right ? `column ${left}` : `row ${top}`;

/** A range of one column or one row, one cell after the other. */
const placesOf = ({ top, bottom, left, right }: CellRange): Place[] =>
  Array.from({ length: bottom - top + right - left + 1 }, (_, at) =>
    left === right ? { row: top + at, column: left } : { row: top, column: left + at },
  );

function lineSumAt(row: number, column: number, cell: WorkbookCell): LineSum | null {
  const range = sumOfRange(cell);
  const { formula } = cell;
  if (formula === undefined || range === null || contains(range, row, column)) return null;
  const { top, bottom, left, right } = range;
  const size = bottom - top + right - left + 1;
  const isLine = top === bottom || left === right;
  return isLine && size >= LEAST_SUMMANDS && size <= MOST_SUMMANDS
    ? { row, column, formula, range }
    : null;
}

/** The sums of a sheet over some cells below or beside each other; there may be a sum in every row of many. */
function lineSums(sheet: WorkbookSheet, isWanted: (sum: LineSum) => boolean): LineSum[] {
  const sums: LineSum[] = [];
  eachFormula(sheet, (row, column, cell) => {
    const sum = lineSumAt(row, column, cell);
    if (sum !== null && isWanted(sum)) sums.push(sum);
  });
  return sums;
}

/** Whether a cell holds the formula of another one, filled on. */
function isFilledFrom(sheet: WorkbookSheet, from: Place, { row, column }: Place): boolean {
  const formula = sheet.cellAt(row, column)?.formula;
  const first = sheet.cellAt(from.row, from.column)?.formula;
  return (
    formula !== undefined &&
    first !== undefined &&
    typeof sheet.cellAt(row, column)?.value === "number" &&
    moveFormula(first, row - from.row, column - from.column) === formula
  );
}

/** The cells beyond one end of what a sum reads, up to its own, into which the same formula was filled. */
function filledBeyond(sheet: WorkbookSheet, sum: LineSum, isAfter: boolean): Place[] {
  const { top, bottom, left, right } = sum.range;
  const [down, across] = left === right ? [isAfter ? 1 : -1, 0] : [0, isAfter ? 1 : -1];
  const end = isAfter ? { row: bottom, column: right } : { row: top, column: left };
  const beyond: Place[] = [];
  for (;;) {
    const step = beyond.length + 1;
    const next = { row: end.row + down * step, column: end.column + across * step };
    const isOwn = next.row === sum.row && next.column === sum.column;
    if (isOwn || !isFilledFrom(sheet, end, next)) return beyond;
    beyond.push(next);
  }
}

const summandAt = (sheet: WorkbookSheet, place: Place): Summand[] => {
  const value = sheet.cellAt(place.row, place.column)?.value;
  return typeof value === "number" ? [{ place, value, counts: true }] : [];
};

/** Whether what lies beyond a sum is added up elsewhere without the rest, as the halves of a year are. */
function isPartedOn(beyond: readonly Place[], first: Place, sums: readonly LineSum[]): boolean {
  return sums.some(
    ({ range }) =>
      beyond.some(({ row, column }) => contains(range, row, column)) &&
      !contains(range, first.row, first.column),
  );
}

const endsOf = ({ top, bottom, left, right }: CellRange): Place[] => [
  { row: top, column: left },
  { row: bottom, column: right },
];

/** Whether most of what is added up is worked out from what lies beyond: the recipe itself, above what each house gets. */
function isBaseOf(sheet: WorkbookSheet, base: Place, places: readonly Place[]): boolean {
  const parts = rangesReadHere(sheet, base);
  // The whole that every part is divided by is read by the base, too.
  const isOwn = ({ row, column }: Place) => parts.some((range) => contains(range, row, column));
  const isFromBase = (place: Place): boolean =>
    rangesReadHere(sheet, place)
      .flatMap(endsOf)
      .filter((part) => !isOwn(part))
      .some((part) =>
        rangesReadHere(sheet, part).some((read) => parts.some((range) => overlaps(range, read))),
      );
  return places.filter(isFromBase).length * 2 > places.length;
}

const beyondOf = (sheet: WorkbookSheet, sum: LineSum): readonly Place[] => [
  ...filledBeyond(sheet, sum, false),
  ...filledBeyond(sheet, sum, true),
];

function stoppingShort(
  sheet: WorkbookSheet,
  sum: LineSum,
  sums: readonly LineSum[],
): FilledTotal[] {
  const { row, column, range } = sum;
  const stored = sheet.cellAt(row, column)?.value;
  const places = placesOf(range);
  const beyond = beyondOf(sheet, sum).filter((place) => !isBaseOf(sheet, place, places));
  const [first] = places;
  if (
    typeof stored !== "number" ||
    first === undefined ||
    beyond.length >= places.length ||
    beyond.length === 0
  )
    return [];
  const isFilled = places.slice(1).every((place) => isFilledFrom(sheet, first, place));
  if (!isFilled || isPartedOn(beyond, first, sums)) return [];
  const missing = beyond.flatMap((place) => summandAt(sheet, place));
  const all = placesOf(rangeOfAll([...places, ...beyond]));
  const summands = all.flatMap((place) => summandAt(sheet, place));
  return [{ total: totalElsewhere(sheet, sum, stored, summands), missing }];
}

/** Whether a sum is one of several that go on step by step, each from where the last one did or from its start. */
const isRunning = (sheet: WorkbookSheet, { row, column, range }: LineSum): boolean =>
  [-1, 1].some((step) =>
    isFilledFrom(
      sheet,
      { row, column },
      range.left === range.right ? { row: row + step, column } : { row, column: column + step },
    ),
  );

/**
 * Sums that stop before the line does: the cells beyond hold the same formula, filled on, and nothing adds them up by
 * themselves. Needs no words and no table around them.
 */
export const sumsStoppingShort = ({ workbook }: AuditContext): FilledTotal[] =>
  workbook.sheets.flatMap((sheet) => {
    const short = lineSums(
      sheet,
      (sum) => beyondOf(sheet, sum).length > 0 && !isRunning(sheet, sum),
    );
    if (short.length === 0) return [];
    const lines = new Set(short.map(lineOf));
    const sums = lineSums(sheet, (sum) => lines.has(lineOf(sum)));
    return short.flatMap((sum) => stoppingShort(sheet, sum, sums));
  });
