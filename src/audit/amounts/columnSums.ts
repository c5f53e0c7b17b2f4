import { eachFormula } from "../../workbook/eachFormula";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { sumOfRange } from "../formulas/sumOfRange";
import type { Place } from "../recipes/recipeBlock";

/** A sum over some rows of its own column. */
export interface ColumnSum extends Place {
  readonly formula: string;
  readonly range: CellRange;
}

const known = new WeakMap<WorkbookSheet, ReadonlyMap<number, readonly ColumnSum[]>>();

/** The sums of a sheet over what stands above them in their column, by their row; looked for once. */
export function columnSums(sheet: WorkbookSheet): ReadonlyMap<number, readonly ColumnSum[]> {
  const found = known.get(sheet) ?? sumsOn(sheet);
  known.set(sheet, found);
  return found;
}

function sumsOn(sheet: WorkbookSheet): ReadonlyMap<number, readonly ColumnSum[]> {
  const byRow = new Map<number, ColumnSum[]>();
  eachFormula(sheet, (row, column, cell) => {
    const range = sumOfRange(cell);
    const { formula } = cell;
    if (formula === undefined || range === null) return;
    if (range.left !== column || range.right !== column || range.bottom >= row) return;
    const sums = byRow.get(row) ?? [];
    byRow.set(row, sums);
    sums.push({ row, column, formula, range });
  });
  return byRow;
}
