import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Workbook } from "../workbook/model";
import { sheetFromRows } from "../workbook/sheetFromRows";
import { openBook } from "./openBook";

const emptyBook = (): Workbook => ({
  sheets: [sheetFromRows("Sheet1", [])],
  names: [],
  calculation: "automatic",
  externalLinks: [],
});

/** The workbook in a file, or an empty one without a file; a Problem in one sentence when it is unreadable. */
export async function readBook(file: string | undefined): Promise<Result<Workbook>> {
  if (file === undefined) return emptyBook();
  const opened = await openBook(file);
  return isProblem(opened) ? opened : opened.workbook;
}
