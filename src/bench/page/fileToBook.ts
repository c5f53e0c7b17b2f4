import type { Result } from "../../foundation/result";
import type { DecimalMark } from "../../workbook/csv/decimalMark";
import { isDecimalQuestion } from "../../workbook/csv/decimalQuestion";
import { isTextTable } from "../../workbook/csv/isTextTable";
import type { OpenedBook } from "../book";

/** Asks the user for a file's decimal mark; null when the file is not to be opened. */
export type AskDecimal = (fileName: string, question: string) => Promise<DecimalMark | null>;

/** Reads a user's file as a book; null when the user was asked and would rather not open it. */
export async function fileToBook(file: File, ask: AskDecimal): Promise<Result<OpenedBook> | null> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (!isTextTable(file.name)) {
    const { xlsxToBook } = await import("../xlsx/xlsxToBook");
    return xlsxToBook(file.name, bytes);
  }
  const { csvToBook } = await import("../csv/csvToBook");
  const read = csvToBook(file.name, bytes, null);
  if (!isDecimalQuestion(read)) return read;
  const mark = await ask(file.name, read.message);
  if (mark === null) return null;
  const again = csvToBook(file.name, bytes, mark);
  return isDecimalQuestion(again) ? null : again;
}
