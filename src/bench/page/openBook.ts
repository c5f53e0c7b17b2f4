import { BooleanNumber, IUndoRedoService } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import "@univerjs/sheets-table/facade";
import type { Book } from "../book";
import { bookToGrid } from "./bookToGrid";

const TABLE_STYLE = "plain";
let opened = 0;

/**
 * Shows a book instead of the one that is open, which is closed only when the new one stands.
 * @returns sentences about what the grid could not take
 */
export async function openBook(api: FUniver, book: Book): Promise<readonly string[]> {
  const former = api.getActiveWorkbook()?.getId();
  opened += 1;
  const workbook = api.createWorkbook(bookToGrid(book, `book${opened}`));
  if (former !== undefined) api.disposeUnit(former);
  const header = { bg: { rgb: "#e8eef3" }, bl: BooleanNumber.TRUE };
  workbook.registerRangeTheme(
    workbook.createRangeThemeStyle(TABLE_STYLE, { headerRowStyle: header }),
  );
  const refused: string[] = [];
  for (const { name, refersTo, sheet } of book.names) {
    const target = sheet === null ? workbook : workbook.getSheetByName(sheet);
    target?.insertDefinedName(name, refersTo);
  }
  for (const [index, sheet] of book.sheets.entries()) {
    for (const { name, range } of sheet.tables) {
      const area = {
        startRow: range.top,
        startColumn: range.left,
        endRow: range.bottom,
        endColumn: range.right,
      };
      const id = `table${opened}-${index}-${name}`;
      const added = await workbook.addTable(`sheet${index + 1}`, name, area, id, {
        tableStyleId: TABLE_STYLE,
      });
      if (!added)
        refused.push(`The table ${name} could not be kept as a table; its cells are there.`);
    }
  }
  // Building the book is not something to undo.
  workbook.getActiveSheet().getInject().get(IUndoRedoService).clearUndoRedo(workbook.getId());
  return refused;
}
