import type { Workbook, WorkbookCell, WorkbookValue } from "../../src/workbook/model";
import type { Recalculation } from "../../src/workbook/recalculation";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";
import { readCsv } from "../../src/workbook/csv/readCsv";
import { emptyBook, isFormula, type CorpusBook, type CorpusSheet, type Typed } from "./book";
import { calculate } from "./calculate";

type Fresh = (sheet: string, row: number, column: number) => WorkbookValue;

const formulaIn = (cell: Typed | undefined): string | null =>
  isFormula(cell) ? cell.content.slice(1) : null;

function modelCell(cell: Typed, fresh: () => WorkbookValue): WorkbookCell {
  const { format, stored } = cell;
  const formula = formulaIn(cell);
  return {
    value: formula === null ? cell.content : stored === undefined ? fresh() : stored,
    ...(formula !== null && { formula }),
    ...(format !== undefined && { format }),
  };
}

export interface ReadBook {
  readonly workbook: Workbook;
  readonly recalculated: Recalculation;
}

const NOT_CALCULATED = /\[|RIBBONTOOL|_xll/i;

function recalculationOf(book: CorpusBook, fresh: Fresh): Recalculation {
  const formulas = book.sheets.flatMap(({ cells }, sheet) =>
    cells.flatMap((line, row) =>
      line.flatMap((cell, column) => {
        const formula = formulaIn(cell);
        return formula === null ? [] : [{ sheet, row, column, formula }];
      }),
    ),
  );
  const left = formulas.filter(({ formula }) => NOT_CALCULATED.test(formula));
  const calculated = formulas.filter((cell) => !left.includes(cell));
  const keys = new Set(calculated.map(({ sheet, row, column }) => `${sheet}!${row},${column}`));
  return {
    valueAt: (sheet, row, column) =>
      keys.has(`${sheet}!${row},${column}`)
        ? fresh(book.sheets[sheet]!.name, row, column)
        : undefined,
    calculated,
    leftAlone: left.map((cell) => ({ cell, reason: "It reads what is not in the workbook." })),
    isComplete: true,
  };
}

/** A value as a German spreadsheet writes it into a file of values. */
function csvField(value: WorkbookValue): string {
  if (typeof value === "number") return String(value).replace(".", ",");
  if (typeof value === "object") return value?.error ?? "";
  const text = String(value);
  return /[;"\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function throughCsv(book: CorpusBook, fresh: Fresh): ReadBook {
  const [{ name, cells }] = book.sheets as [CorpusSheet];
  const lines = cells.map((line, row) =>
    line.map((cell, column) => csvField(cell === undefined ? null : fresh(name, row, column))),
  );
  const bytes = new TextEncoder().encode(lines.map((line) => line.join(";")).join("\r\n"));
  const read = readCsv(bytes, name, ",");
  if (!("workbook" in read)) throw new Error(`The corpus wrote a file that is refused: ${name}.`);
  return { workbook: read.workbook, recalculated: recalculationOf(emptyBook(), fresh) };
}

/** A corpus book as the audit gets it: the stored values, and the formulas calculated anew. */
export function toWorkbook(book: CorpusBook): ReadBook {
  const fresh = calculate(book);
  if (book.isCsv) return throughCsv(book, fresh);
  const sheets = book.sheets.map(({ name, cells, ...rest }) => {
    const rows = cells.map((line, row) =>
      line.map((cell, column) => cell && modelCell(cell, () => fresh(name, row, column))),
    );
    return sheetFromRows(name, rows, rest);
  });
  const { calculation, externalLinks, names } = book;
  const workbook = { sheets, names, calculation, externalLinks };
  return { workbook, recalculated: recalculationOf(book, fresh) };
}
