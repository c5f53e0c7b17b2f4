import type { SpreadsheetHost } from "./host";
import { addSheet } from "./office/addSheet";
import { insertInto } from "./office/insertInto";
import { insertPicture } from "./office/insertPicture";
import { BLOCK_PROPERTIES, rangeBlock } from "./office/rangeBlock";
import { readSelection } from "./office/readSelection";
import { readWorkbook } from "./office/readWorkbook";
import { writeCells } from "./office/writeCells";

/**
 * Adding an event handler clears the user's undo history, so there is one for the pane's whole life, added
 * when a view first asks; views come and go in a set of their own.
 */
function selectionListeners() {
  const callbacks = new Set<() => void>();
  let added: Promise<unknown> | null = null;
  const add = () =>
    Excel.run(async (context) => {
      context.workbook.onSelectionChanged.add(() => {
        for (const callback of callbacks) callback();
        return Promise.resolve();
      });
      await context.sync();
    });
  return async (callback: () => void) => {
    callbacks.add(callback);
    try {
      await (added ??= add());
    } catch (error) {
      added = null; // the next view may have more luck
      callbacks.delete(callback);
      throw error;
    }
    return () => void callbacks.delete(callback);
  };
}

/** The spreadsheet through Excel's own interface. */
export function excelHost(): SpreadsheetHost {
  return {
    readSelection: () => Excel.run(readSelection),
    read: (sheet, address) =>
      Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem(sheet).getRange(address);
        range.load(BLOCK_PROPERTIES);
        await context.sync();
        return rangeBlock(range);
      }),
    cellsFromSelection: (rowCount, columnCount) =>
      Excel.run(async (context) => {
        const corner = context.workbook.getSelectedRange().getCell(0, 0);
        const range = corner.getResizedRange(rowCount - 1, columnCount - 1);
        range.load(BLOCK_PROPERTIES);
        await context.sync();
        return rangeBlock(range);
      }),
    insert: (place, contents, { overwrite = false } = {}) =>
      Excel.run((context) => insertInto(context, place, contents, overwrite)),
    readOnEachSheet: (address) =>
      Excel.run(async (context) => {
        const { worksheets } = context.workbook;
        worksheets.load("items/name");
        await context.sync();
        const ranges = worksheets.items.map((sheet) => sheet.getRange(address));
        for (const range of ranges) range.load(BLOCK_PROPERTIES);
        await context.sync();
        return ranges.map(rangeBlock);
      }),
    usedBlock: (sheet) =>
      Excel.run(async (context) => {
        const used = context.workbook.worksheets.getItem(sheet).getUsedRangeOrNullObject(true);
        used.load(BLOCK_PROPERTIES);
        await context.sync();
        return used.isNullObject ? null : rangeBlock(used);
      }),
    addSheet: (wishedName, contents) =>
      Excel.run((context) => addSheet(context, wishedName, contents)),
    writeCells: (edits) => Excel.run((context) => writeCells(context, edits)),
    insertPicture: (pngBase64, name) =>
      Excel.run((context) => insertPicture(context, pngBase64, name)),
    readWorkbook: (options = {}) => Excel.run((context) => readWorkbook(context, options)),
    goTo: (sheet, address) =>
      Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.getItem(sheet);
        worksheet.activate();
        worksheet.getRange(address).select();
        await context.sync();
      }),
    onSelectionChanged: selectionListeners(),
  };
}
