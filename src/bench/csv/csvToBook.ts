import { isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import type { DecimalMark } from "../../workbook/csv/decimalMark";
import { isDecimalQuestion, type DecimalQuestion } from "../../workbook/csv/decimalQuestion";
import { readCsv } from "../../workbook/csv/readCsv";
import type { OpenedBook } from "../book";
import { bookSheet } from "../bookSheet";

const AS_XLSX = "A saved copy is a new .xlsx file; your file itself stays as it is.";

/** Reads a text file of rows and fields as a book, or answers with what has to be asked first. */
export function csvToBook(
  fileName: string,
  bytes: Uint8Array,
  mark: DecimalMark | null,
): Result<OpenedBook> | DecimalQuestion {
  const name = fileName.replace(/\.\w+$/, "");
  const read = readCsv(bytes, name.replace(/[[\]:*?/\\]/g, " ").slice(0, 31) || "Sheet1", mark);
  if (isProblem(read) || isDecimalQuestion(read)) return read;
  const sheets = read.workbook.sheets.map((sheet) => bookSheet(sheet));
  return { book: { name, sheets, names: [] }, notes: [...read.reading, AS_XLSX] };
}
