import { columnIndex } from "../../../workbook/address";
import type { WorkbookSheet } from "../../../workbook/model";
import { contains } from "../../../workbook/references";
import { rangesReadHere } from "../../formulas/rangesReadHere";

/** One cell less what others make, be it rounded: "I5-H5", "ROUND(F5-SUM(B5:D5),2)". */
const DIFFERENCE = /^\s*(?:ROUND\s*\(\s*)?\$?([A-Z]{1,3})\$?(\d+)\s*-\s*[^-]+$/i;
/** What was weighed in instead of something is about as much; a stock is another number. */
const UNLIKE = 0.2;

/** What a formula reads of its own row. */
const readAcross = (sheet: WorkbookSheet, row: number, column: number) =>
  rangesReadHere(sheet, { row, column }).filter(({ top, bottom }) => top === row && bottom === row);

/** The stock of which a cell says what is left, or what is missing, once all that is worked out as needed is taken. */
function stockAt(sheet: WorkbookSheet, row: number, column: number): number | null {
  const [, letters, line] = DIFFERENCE.exec(sheet.cellAt(row, column)?.formula ?? "") ?? [];
  if (letters === undefined || Number(line) !== row + 1) return null;
  const first = columnIndex(letters);
  const others = readAcross(sheet, row, column).filter((range) => range.right !== first);
  const [only, ...more] = others;
  if (only === undefined) return null;
  const isAdded = more.length > 0 || only.left < only.right;
  const isTyped = (at: number) => sheet.cellAt(row, at)?.formula === undefined;
  const stock = isAdded || isTyped(first) ? first : only.left;
  const needed = stock === first ? only.left : first;
  const sources = isAdded ? others : readAcross(sheet, row, needed);
  const isFromOthers = sources.length > 0 && !sources.some((range) => contains(range, row, stock));
  const [there, left] = [stock, column].map((at) => sheet.cellAt(row, at)?.value);
  if (!isTyped(stock) || !isFromOthers || typeof there !== "number" || typeof left !== "number")
    return null;
  return Math.abs(left) > UNLIKE * there ? stock : null;
}

/**
 * The columns of a list that say what there is of each ingredient and what is left of it, whatever they are called:
 * all that is needed for the recipes beside it is worked out and taken off, line by line.
 */
export const stockColumns = (
  sheet: WorkbookSheet,
  columns: readonly number[],
  items: readonly number[],
): readonly number[] =>
  columns.flatMap((column) => {
    const stocks = items.flatMap((row) => stockAt(sheet, row, column) ?? []);
    const same = stocks.filter((stock) => stock === stocks[0]);
    return stocks[0] !== undefined && same.length * 2 > items.length ? [column, stocks[0]] : [];
  });
