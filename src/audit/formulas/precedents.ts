import type { Workbook, WorkbookSheet } from "../../workbook/model";
import type { Place } from "../recipes/recipeBlock";
import type { CellRange } from "../../workbook/model";
import { rangesRead, type RangeRead } from "./rangesRead";

/** Formula cells followed at most: enough for a recipe's working, bounded for a ledger's. */
const MOST_FORMULAS = 400;

/** Everything that a cell's formula reads, followed through the formulas it reads. */
export function precedentsOf(workbook: Workbook, sheet: WorkbookSheet, place: Place): RangeRead[] {
  const read = rangesRead(workbook);
  const found: RangeRead[] = [];
  const seen = new Set<string>();
  const queue: { sheet: WorkbookSheet; row: number; column: number }[] = [{ sheet, ...place }];
  for (
    let next = queue.pop();
    next !== undefined && seen.size < MOST_FORMULAS;
    next = queue.pop()
  ) {
    const key = `${next.sheet.name}!${next.row},${next.column}`;
    const formula = next.sheet.cellAt(next.row, next.column)?.formula;
    if (formula === undefined || seen.has(key)) continue;
    seen.add(key);
    for (const block of read(next.sheet, formula)) {
      found.push(block);
      queue.push(...formulaCells(block.sheet, block.range));
    }
  }
  return found;
}

function formulaCells(sheet: WorkbookSheet, range: CellRange) {
  const cells: { sheet: WorkbookSheet; row: number; column: number }[] = [];
  const bottom = Math.min(range.bottom, sheet.rowCount - 1, range.top + MOST_FORMULAS);
  const right = Math.min(range.right, sheet.columnCount - 1, range.left + 30);
  for (let row = range.top; row <= bottom && cells.length < MOST_FORMULAS; row += 1) {
    for (let column = range.left; column <= right; column += 1) {
      if (sheet.cellAt(row, column)?.formula !== undefined) cells.push({ sheet, row, column });
    }
  }
  return cells;
}
