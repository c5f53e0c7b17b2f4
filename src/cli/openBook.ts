import path from "node:path";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { DecimalMark } from "../workbook/csv/decimalMark";
import type { ReadCsv } from "../workbook/csv/readCsv";
import { readWorkbook } from "../workbook/readWorkbook";
import { fileBytes } from "./fileBytes";

const TEXT_FILES = new Set([".csv", ".tsv", ".txt"]);

/** A workbook and how its file was read, in sentences. */
export type OpenedBook = ReadCsv;

/** Opens an .xlsx or .xlsm workbook, or a text file of fields; by the name's ending. */
export async function openBook(
  file: string,
  decimal: DecimalMark | null = null,
): Promise<Result<OpenedBook>> {
  const bytes = await fileBytes(file);
  if (isProblem(bytes)) return bytes;
  const { name, ext } = path.parse(file);
  if (TEXT_FILES.has(ext.toLowerCase())) {
    const { readCsv } = await import("../workbook/csv/readCsv");
    return readCsv(bytes, name, decimal);
  }
  const workbook = await readWorkbook(bytes);
  return isProblem(workbook) ? workbook : { workbook, reading: [] };
}
