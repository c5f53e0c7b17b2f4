import path from "node:path";
import { badInput, isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { DecimalMark } from "../workbook/csv/decimalMark";
import { isDecimalQuestion } from "../workbook/csv/decimalQuestion";
import { isTextTable } from "../workbook/csv/isTextTable";
import type { ReadCsv } from "../workbook/csv/readCsv";
import { readWorkbook } from "../workbook/readWorkbook";
import { fileBytes } from "./fileBytes";

/** A workbook and how its file was read, in sentences. */
export type OpenedBook = ReadCsv;

/** Opens an .xlsx or .xlsm workbook, or a text file of fields; by the name's ending. */
export async function openBook(
  file: string,
  decimal: DecimalMark | null = null,
): Promise<Result<OpenedBook>> {
  const bytes = await fileBytes(file);
  if (isProblem(bytes)) return bytes;
  if (isTextTable(file)) {
    const { readCsv } = await import("../workbook/csv/readCsv");
    const read = readCsv(bytes, path.parse(file).name, decimal);
    return isDecimalQuestion(read)
      ? badInput(`${read.message} Say which with --decimal comma or --decimal point.`)
      : read;
  }
  const workbook = await readWorkbook(bytes);
  return isProblem(workbook) ? workbook : { workbook, reading: [] };
}
