import { referencedSheets } from "./univer/referencedSheets";

/** A name of another workbook, "[1]!Prices"; no column of a table, "[@Grams]". */
const NAME = /(?<![\p{L}\p{N}_\]])\[([^\][@#]+)\]!/u;
const BOOK = /\[([^\][]+)\]/;

/** The other workbook that a formula reads: "1" as files number their links, or its name; null for none. */
export function linkedWorkbook(formula: string): string | null {
  if (!formula.includes("[")) return null;
  for (const sheet of referencedSheets(formula)) {
    const [, book] = BOOK.exec(sheet) ?? [];
    if (book !== undefined) return book;
  }
  return NAME.exec(formula.replace(/"(?:[^"]|"")*"/g, '""'))?.[1] ?? null;
}
