import type { CellRange } from "../../src/workbook/model";

/** Where a range lies; what a range has to load to be one. */
export const EXTENT_PROPERTIES = "address,rowIndex,columnIndex,rowCount,columnCount";

type Extent = Pick<Excel.Range, "rowIndex" | "columnIndex" | "rowCount" | "columnCount">;

/** A loaded range's rows and columns, as the model has them. */
export const cellRange = ({ rowIndex, columnIndex, rowCount, columnCount }: Extent): CellRange => ({
  top: rowIndex,
  left: columnIndex,
  bottom: rowIndex + rowCount - 1,
  right: columnIndex + columnCount - 1,
});

const contains = (outer: Extent, row: number, column: number): boolean =>
  row >= outer.rowIndex &&
  row < outer.rowIndex + outer.rowCount &&
  column >= outer.columnIndex &&
  column < outer.columnIndex + outer.columnCount;

/** The table in which a cell lies, or null. */
export async function tableAround(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  at: Extent,
): Promise<Excel.Range | null> {
  const { tables } = context.workbook;
  tables.load("items/name");
  sheet.load("name");
  await context.sync();
  const ranges = tables.items.map((table) => {
    const [range, { worksheet }] = [table.getRange(), table];
    worksheet.load("name");
    range.load(EXTENT_PROPERTIES);
    return { worksheet, range };
  });
  if (ranges.length === 0) return null;
  await context.sync();
  const found = ranges.find(
    ({ worksheet, range }) =>
      worksheet.name === sheet.name && contains(range, at.rowIndex, at.columnIndex),
  );
  return found?.range ?? null;
}

/** Top, left, rows and columns, as getRangeByIndexes takes them. */
export type CellPart = [top: number, left: number, rowCount: number, columnCount: number];

/** The part of a range that is in use; null when none is. */
export function commonPart(one: Extent, other: Extent): CellPart | null {
  const top = Math.max(one.rowIndex, other.rowIndex);
  const left = Math.max(one.columnIndex, other.columnIndex);
  const rows = Math.min(one.rowIndex + one.rowCount, other.rowIndex + other.rowCount) - top;
  const columns =
    Math.min(one.columnIndex + one.columnCount, other.columnIndex + other.columnCount) - left;
  return rows > 0 && columns > 0 ? [top, left, rows, columns] : null;
}
