import type { CellVisitor, Workbook, WorkbookSheet } from "./model";
import type { SheetRange } from "./precedents";

/** Workbooks of up to so many cells go into the grid whole. */
const SMALL = 200_000;
/** Cells gathered at most, those gathered twice counted twice. */
const MOST_GATHERED = 2_000_000;

const areaOf = ({ range: { top, left, bottom, right } }: SheetRange): number =>
  Math.max(0, bottom - top + 1) * Math.max(0, right - left + 1);

/** A sheet of which only the marked cells are seen. */
function maskedSheet(sheet: WorkbookSheet, ranges: readonly SheetRange[]): WorkbookSheet {
  const marked = new Set<number>();
  for (const { range } of ranges) {
    for (let row = range.top; row <= range.bottom; row += 1) {
      for (let column = range.left; column <= range.right; column += 1) {
        marked.add(row * sheet.columnCount + column);
      }
    }
  }
  const visitCells = (visit: CellVisitor): void => {
    for (const place of marked) {
      const [row, column] = [Math.floor(place / sheet.columnCount), place % sheet.columnCount];
      const cell = sheet.cellAt(row, column);
      if (cell !== undefined) visit(row, column, cell);
    }
  };
  const visitFormulas = (visit: CellVisitor): void =>
    visitCells((row, column, cell) => {
      if (cell.formula !== undefined) visit(row, column, cell);
    });
  return { ...sheet, visitCells, visitFormulas };
}

/**
 * A large workbook cut down to the blocks that are needed, so that the grid holds no more than them; null
 * when even those are too many.
 */
export function partOf(workbook: Workbook, blocks: readonly SheetRange[]): Workbook | null {
  const size = workbook.sheets.reduce((sum, sheet) => sum + sheet.rowCount * sheet.columnCount, 0);
  if (size <= SMALL) return workbook;
  if (blocks.reduce((sum, block) => sum + areaOf(block), 0) > MOST_GATHERED) return null;
  const sheets = workbook.sheets.map((sheet, index) =>
    maskedSheet(
      sheet,
      blocks.filter((block) => block.sheet === index),
    ),
  );
  return { ...workbook, sheets };
}
