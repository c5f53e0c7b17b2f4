import { addSheet, emptyBook, put, type CorpusBook } from "../corpus/book";
import { calculate } from "../corpus/calculate";
import { toWorkbook, type ReadBook } from "../corpus/toWorkbook";

/** A number that somebody worked out elsewhere and typed, rounded as people round. */
export interface WorkedOut {
  readonly formula: string;
  readonly digits: number;
}

/** What is typed into a cell; a formula begins with "=", null leaves it blank. */
export type StrangersCell = number | string | null | WorkedOut;
export type StrangersRows = readonly (readonly StrangersCell[])[];

/** A workbook as somebody typed it who knows nothing of the audit, right in all it says. */
export interface StrangersBook {
  readonly title: string;
  readonly sheets: Readonly<Record<string, StrangersRows>>;
  /** What is truly to be said of it all the same, by rule. */
  readonly told?: readonly string[];
}

/** What a formula gives in this place, as a typed number. */
export const workedOut = (formula: string, digits = 1): WorkedOut => ({ formula, digits });

const isWorkedOut = (cell: StrangersCell): cell is WorkedOut =>
  typeof cell === "object" && cell !== null;

function bookOf(
  { sheets }: StrangersBook,
  contentOf: (cell: WorkedOut, sheet: string, row: number, column: number) => number | string,
): CorpusBook {
  const book = emptyBook();
  for (const [name, rows] of Object.entries(sheets)) {
    const sheet = addSheet(book, name);
    rows.forEach((cells, row) =>
      cells.forEach((cell, column) => {
        if (cell === null || cell === "") return;
        put(sheet, row, column, isWorkedOut(cell) ? contentOf(cell, name, row, column) : cell);
      }),
    );
  }
  return book;
}

/** The workbook with its formulas calculated; throws where a number that was worked out is none. */
export function strangersWorkbook(given: StrangersBook): ReadBook {
  const valueAt = calculate(bookOf(given, ({ formula }) => formula));
  const typed = bookOf(given, ({ formula, digits }, sheet, row, column) => {
    const value = valueAt(sheet, row, column);
    if (typeof value !== "number")
      throw new Error(`${given.title}: ${formula} gives ${JSON.stringify(value)}.`);
    return Number(value.toFixed(digits));
  });
  return toWorkbook(typed);
}
