import type { Contents } from "../host";
import { freeSheetName } from "./freeSheetName";

const ROWS_AT_ONCE = 20_000; // Excel on the web takes 5 MB a request

/** Writes a new sheet under a free name and shows nothing: selection and active sheet stay. */
export async function addSheet(
  context: Excel.RequestContext,
  wishedName: string,
  contents: Contents,
): Promise<string> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  const name = freeSheetName(
    wishedName,
    worksheets.items.map((sheet) => sheet.name),
  );
  const sheet = worksheets.add(name);
  const columnCount = Math.max(1, ...contents.map((row) => row.length));
  for (let top = 0; top < contents.length; top += ROWS_AT_ONCE) {
    const rows = contents.slice(top, top + ROWS_AT_ONCE);
    sheet.getRangeByIndexes(top, 0, rows.length, columnCount).formulas = rows.map((row) =>
      Array.from({ length: columnCount }, (_cell, column) => row[column] ?? ""),
    );
    await context.sync();
  }
  await context.sync();
  return name;
}
