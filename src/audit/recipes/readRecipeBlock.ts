import type { Matrix } from "../../foundation/cell";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { blocksAcross } from "./blocksAcross";
import { blocksDown } from "./blocksDown";
import { knownItems } from "./names/knownItems";
import type { RecipeBlock } from "./recipeBlock";
import { sheetTexts } from "./sheetTexts";

/** A window on part of a sheet: places outside the range are blank, addresses stay those of the sheet. */
function within(sheet: WorkbookSheet, { top, left, bottom, right }: CellRange): WorkbookSheet {
  const inside = (row: number, column: number) =>
    row >= top && row <= bottom && column >= left && column <= right;
  return {
    name: sheet.name,
    hidden: sheet.hidden,
    tables: sheet.tables,
    merged: sheet.merged,
    hiddenRows: sheet.hiddenRows,
    hiddenColumns: sheet.hiddenColumns,
    rowCount: Math.min(sheet.rowCount, bottom + 1),
    columnCount: Math.min(sheet.columnCount, right + 1),
    cellAt: (row, column) => (inside(row, column) ? sheet.cellAt(row, column) : undefined),
  };
}

/**
 * Reads the recipe in a selected range; null when there is none or more than one list of names, so that
 * the caller asks. For a block held in memory make the sheet with `sheetFromRows(name, rows)`. The amounts
 * are then read with `amountOf(block, recipe, name)`, and what was taken for what is told by `describeBlock`.
 */
export function readRecipeBlock(
  sheet: WorkbookSheet,
  range: CellRange,
  ownIngredients: Matrix | null = null,
): RecipeBlock | null {
  const window = within(sheet, range);
  const context = { sheet: window, ownIngredients, check: knownItems(ownIngredients), calls: [] };
  const texts = sheetTexts(window);
  const down = blocksDown(context, texts);
  const blocks = down.length > 0 ? down : blocksAcross(context, texts, []);
  return blocks.length === 1 ? (blocks[0] ?? null) : null;
}
