import { isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import type { Workbook } from "../../workbook/model";
import { readWorkbook } from "../../workbook/readWorkbook";
import type { OpenedBook } from "../book";
import { bookSheet } from "../bookSheet";
import { notCarried } from "./notCarried";
import { readLooks } from "./readLooks";

const MOST_BYTES_FOR_LOOKS = 2_000_000; // beyond it the second reader takes too long and too much memory

/** Excel's own hidden names (filters, print areas) belong to parts the bench does not carry. */
const isOwnName = ({ name }: { readonly name: string }): boolean => !name.startsWith("_xlnm.");

/** Reads a user's workbook as far as the bench can show it. Unreadable: one sentence. */
export async function xlsxToBook(fileName: string, bytes: Uint8Array): Promise<Result<OpenedBook>> {
  const workbook: Result<Workbook> = await readWorkbook(bytes);
  if (isProblem(workbook)) return workbook;
  const looks = bytes.length > MOST_BYTES_FOR_LOOKS ? null : await readLooks(bytes);
  const book = {
    name: fileName.replace(/\.xls[xm]$/i, ""),
    sheets: workbook.sheets.map((sheet) => bookSheet(sheet, looks?.get(sheet.name))),
    names: workbook.names.filter(isOwnName),
  };
  return { book, notes: notCarried(bytes, workbook, looks) };
}
