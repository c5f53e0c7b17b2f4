import type { Contents } from "../host";
import { freeSheetName } from "./freeSheetName";
import { HalfWritten } from "./halfWritten";

const ROWS_AT_ONCE = 20_000; // Excel on the web takes 5 MB a request

async function sheetNames(context: Excel.RequestContext): Promise<readonly string[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  return worksheets.items.map((sheet) => sheet.name);
}

/** Adds the sheet and fills it: up to 20,000 rows by one `sync`, of which Excel makes one step to undo. */
async function fill(
  context: Excel.RequestContext,
  name: string,
  contents: Contents,
): Promise<void> {
  const sheet = context.workbook.worksheets.add(name);
  const columnCount = Math.max(1, ...contents.map((row) => row.length));
  for (let top = 0; top < contents.length; top += ROWS_AT_ONCE) {
    if (top > 0) await context.sync();
    const rows = contents.slice(top, top + ROWS_AT_ONCE);
    sheet.getRangeByIndexes(top, 0, rows.length, columnCount).formulas = rows.map((row) =>
      Array.from({ length: columnCount }, (_cell, column) => row[column] ?? ""),
    );
  }
  await context.sync();
}

/**
 * Writes a new sheet under a free name and shows nothing: selection and active sheet stay. A sheet that could
 * not be filled is named, not taken away: deleting one clears what the user can undo.
 */
export async function addSheet(
  context: Excel.RequestContext,
  wishedName: string,
  contents: Contents,
): Promise<string> {
  const taken = await sheetNames(context);
  const name = freeSheetName(wishedName, taken);
  try {
    await fill(context, name, contents);
  } catch (fault) {
    const now = await sheetNames(context).catch(() => null);
    if (now === null) throw new HalfWritten({ kind: "unknown", places: [name] }, fault);
    if (now.includes(name)) throw new HalfWritten({ kind: "sheet", name }, fault);
    throw fault;
  }
  return name;
}
