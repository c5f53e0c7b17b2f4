import type { WorkbookSheet } from "../../workbook/model";
import { overlaps } from "../../workbook/references";
import type { AuditContext } from "../context";
import { textAt } from "../recipes/cells";
import { columnSums, type ColumnSum } from "./columnSums";
import type { FilledTotal } from "./filledTotals";
import { isFarFromSum } from "./isFarFromSum";
import { listsOn } from "./listsOn";
import { numbersInRows } from "./numbersInRows";
import { totalElsewhere } from "./totalElsewhere";
import { agrees, sumOf, type Summand } from "./totalledLines";

/** A single sum beside a number says nothing of it but where that may be one. */
const LEAST_SUMS = 2;
const LEAST_LINES = 3;
const [LEAST_ROWS, MOST_ROWS] = [2, 400];

/** Whether a number may be a sum, and no average of what is never below zero: no less than each of them. */
const mayBeSum = (stored: number, summands: readonly Summand[]): boolean =>
  summands.length >= LEAST_LINES &&
  summands.every(({ value }) => value >= 0 && value <= stored) &&
  summands.some(({ value }) => value < stored);

/** The typed number in a column beside sums over the same rows, where it is not what they would be there. */
function typedAt(
  sheet: WorkbookSheet,
  [like, ...others]: readonly [ColumnSum, ...ColumnSum[]],
  column: number,
): FilledTotal[] {
  const { row, range } = like;
  const cell = column < 0 ? null : sheet.cellAt(row, column);
  if (typeof cell?.value !== "number" || cell.formula !== undefined) return [];
  const summands = numbersInRows(sheet, column, range);
  const isHeaded = textAt(sheet, range.top - 1, column) !== "";
  if (summands === null || !isHeaded) return [];
  if (others.length + 1 < LEAST_SUMS && !mayBeSum(cell.value, summands)) return [];
  const total = totalElsewhere(sheet, { row, column }, cell.value, summands);
  return agrees(total, sumOf(summands)) || isFarFromSum(total) ? [] : [{ total, missing: [] }];
}

/** The columns between and right beside some sums that have none themselves. */
function columnsAmong(sums: readonly ColumnSum[]): readonly number[] {
  const own = new Set(sums.map(({ column }) => column));
  const [first, last] = [Math.min(...own) - 1, Math.max(...own) + 1];
  const all = Array.from({ length: last - first + 1 }, (_, at) => first + at);
  return all.filter((column) => !own.has(column));
}

function inRow(sheet: WorkbookSheet, sums: readonly ColumnSum[]): FilledTotal[] {
  const [like, ...others] = sums;
  if (like === undefined) return [];
  const { top, bottom } = like.range;
  const size = bottom - top + 1;
  const areAlike = sums.every(({ range }) => range.top === top && range.bottom === bottom);
  if (!areAlike || size < LEAST_ROWS || size > MOST_ROWS) return [];
  return columnsAmong(sums).flatMap((column) => typedAt(sheet, [like, ...others], column));
}

/** Numbers typed beside sums below a table that is no recipe, and other than its own column adds up to. */
export const typedBesideSums = ({ workbook, blocks }: AuditContext): FilledTotal[] =>
  workbook.sheets.flatMap((sheet) => {
    const lists = listsOn(blocks, sheet);
    const isApart = ({ range }: ColumnSum) => !lists.some((list) => overlaps(list, range));
    return [...columnSums(sheet).values()].flatMap((sums) => inRow(sheet, sums.filter(isApart)));
  });
