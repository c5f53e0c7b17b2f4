import { parseCellName } from "../../workbook/address";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { contains, referencesOf } from "../../workbook/references";

const CELL = /\$?[A-Z]{1,3}\$?\d{1,7}(?![\p{L}\p{N}_.(!])/giu;
/** Cells of a column are compared so far. */
const MOST_ROWS = 2000;

const isFilled = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  (sheet.cellAt(row, column)?.value ?? null) !== null;

/** Whether every cell of a range that is not blank lies in another range too. */
function liesIn(sheet: WorkbookSheet, range: CellRange, other: CellRange): boolean {
  if (range.bottom - range.top > MOST_ROWS) return false;
  for (let row = range.top; row <= range.bottom; row += 1) {
    for (let column = range.left; column <= range.right; column += 1) {
      if (isFilled(sheet, row, column) && !contains(other, row, column)) return false;
    }
  }
  return true;
}

/** A sum of what a filter shows is a sum; what it leaves out is another question. */
const SUM_OF_SHOWN = /\b(?:SUBTOTAL\((?:9|109),|AGGREGATE\(9,[0-7],)/gi;

const frameOf = (formula: string): string =>
  formula.replace(SUM_OF_SHOWN, "SUM(").replace(CELL, "·");

const isOneCell = ({ top, bottom, left, right }: CellRange): boolean =>
  top === bottom && left === right;

const isSameCell = (one: CellRange, other: CellRange): boolean =>
  isOneCell(one) && isOneCell(other) && contains(one, other.top, other.left);

/** Whether two formulas of a sheet are alike but for blank cells: the sum of a shorter column among longer ones. */
export function readsTheSame(sheet: WorkbookSheet, formula: string, other: string): boolean {
  if (frameOf(formula) !== frameOf(other)) return false;
  // A blank cell that is added, or one more of a sum, changes nothing; one that is multiplied does.
  const isAdded = !/[*/^]/.test(formula);
  const [own, theirs] = [referencesOf(formula), referencesOf(other)];
  return own.every(({ range, sheet: name }, at) => {
    const counterpart = theirs[at];
    return (
      name === null &&
      counterpart?.sheet === null &&
      (isAdded || !isOneCell(range) || isSameCell(range, counterpart.range)) &&
      liesIn(sheet, range, counterpart.range) &&
      liesIn(sheet, counterpart.range, range)
    );
  });
}

const RANGE = /(\$?[A-Z]{1,3}\$?\d{1,7})(?::(\$?[A-Z]{1,3}\$?\d{1,7}))?(?![\p{L}\p{N}_.(!])/giu;

/** Whether all cells from one to another are blank; of a large range the first. */
function areBlank(sheet: WorkbookSheet, from: string, to: string): boolean {
  const [first, last] = [from, to].map((cell) => parseCellName(cell.replaceAll("$", "")));
  if (!first || !last) return false;
  for (let row = first.row; row <= Math.min(last.row, first.row + MOST_ROWS); row += 1) {
    for (let column = first.column; column <= last.column; column += 1) {
      if (isFilled(sheet, row, column)) return false;
    }
  }
  return true;
}

/** Whether a formula has cells that move with its row, and all of them are blank. */
export function readsOnlyBlanks(sheet: WorkbookSheet, formula: string): boolean {
  const moving = [...formula.matchAll(RANGE)].filter(([cells]) => !/\$\d/.test(cells));
  return (
    moving.length > 0 &&
    !formula.includes("!") &&
    moving.every(([, from = "", to = from]) => areBlank(sheet, from, to))
  );
}
