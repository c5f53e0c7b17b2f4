import type { SelectedBlocks } from "../host";
import { commonPart, type CellPart, EXTENT_PROPERTIES, tableAround } from "./blockAround";
import { tooLarge } from "./hostFault";
import { BLOCK_PROPERTIES, rangeBlock } from "./rangeBlock";

const MOST_CELLS = 60000; // about 3 MB to carry over: under the web's limit of 5 MB

/** What is selected, and the table or the contiguous block around a single cell. */
export async function readSelection(context: Excel.RequestContext): Promise<SelectedBlocks> {
  const range = context.workbook.getSelectedRange();
  const sheet = context.workbook.worksheets.getActiveWorksheet();
  const used = sheet.getUsedRangeOrNullObject(true);
  range.load(EXTENT_PROPERTIES);
  used.load(EXTENT_PROPERTIES);
  await context.sync();

  const isOneCell = range.rowCount === 1 && range.columnCount === 1;
  const common = used.isNullObject ? null : commonPart(range, used);
  const corner: CellPart = [range.rowIndex, range.columnIndex, 1, 1];
  const selected = sheet.getRangeByIndexes(...(common ?? corner));
  const around = isOneCell
    ? ((await tableAround(context, sheet, range)) ?? range.getSurroundingRegion())
    : selected;
  for (const part of [selected, around]) part.load("rowCount,columnCount");
  await context.sync();
  const cells = around.rowCount * around.columnCount;
  if (cells > MOST_CELLS) throw tooLarge(cells, MOST_CELLS);
  for (const part of [selected, around]) part.load(BLOCK_PROPERTIES);
  await context.sync();
  return { selected: rangeBlock(selected), around: rangeBlock(around) };
}
