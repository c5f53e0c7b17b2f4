import { eachFormula } from "../../workbook/eachFormula";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { sumOfRange } from "../formulas/sumOfRange";
import type { Place } from "../recipes/recipeBlock";

/** A sum over some rows of its own column. */
export interface ColumnSum extends Place {
  readonly formula: string;
  readonly range: CellRange;
}

/** The sums of a sheet over what stands above them in their column, by their row. */
export function columnSums(sheet: WorkbookSheet): ReadonlyMap<number, readonly ColumnSum[]> {
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
