import { readFile } from "node:fs/promises";
import { badInput } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Workbook } from "../workbook/model";
import { readWorkbook } from "../workbook/readWorkbook";
import { sheetFromRows } from "../workbook/sheetFromRows";

const emptyBook = (): Workbook => ({
  sheets: [sheetFromRows("Sheet1", [])],
  names: [],
  calculation: "automatic",
  externalLinks: [],
});

/** The workbook in a file, or an empty one without a file; a Problem in one sentence when it is unreadable. */
export async function readBook(file: string | undefined): Promise<Result<Workbook>> {
  if (file === undefined) return emptyBook();
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return badInput(
      code === "ENOENT" ? `There is no file "${file}".` : `The file "${file}" cannot be read.`,
    );
  }
  return readWorkbook(bytes);
}
