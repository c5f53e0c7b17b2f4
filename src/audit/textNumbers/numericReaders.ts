import { eachFormula } from "../../workbook/eachFormula";
import type { Workbook, WorkbookSheet, WorkbookValue } from "../../workbook/model";
import { contains, referencesOf } from "../../workbook/references";
import type { Place } from "../recipes/recipeBlock";

/** A formula that takes a cell for a number. */
export interface Reader extends Place {
  readonly sheet: WorkbookSheet;
  readonly formula: string;
  readonly value: WorkbookValue;
}

export interface CellOf extends Place {
  readonly sheet: WorkbookSheet;
}

/** These look a text up, join it or count it; they do not calculate with it. */
const AS_TEXT =
  /&|=\s*"|"\s*=|\b(TEXT|LEFT|RIGHT|MID|LEN|TRIM|FIND|SEARCH|SUBSTITUTE|CONCAT\w*|TEXTJOIN|[VHX]?LOOKUP|X?MATCH|COUNTA?|COUNTIFS?|SUMIFS?|ISTEXT|ISNUMBER|VALUE|NUMBERVALUE|EXACT|UPPER|LOWER|INDIRECT)\s*\(/i;
const CALCULATES =
  /[-+*/^]|\b(SUM|AVERAGE|MIN|MAX|SUMPRODUCT|PRODUCT|ROUND|MEDIAN|RIME\.\w+)\s*\(/i;
/** Formulas looked at in all; beyond that a ledger's columns tell enough. */
const MOST_FORMULAS = 50_000;

const keyOf = (sheet: string, row: number, column: number): string =>
  `${sheet.toLowerCase()}!${row},${column}`;

/** Which of some cells a formula reads; most references are to one cell, and need no search. */
function lookup(cells: readonly CellOf[]) {
  const bySpot = new Map(
    cells.map(({ sheet, row, column }, at) => [keyOf(sheet.name, row, column), at]),
  );
  return (formula: string, own: WorkbookSheet): readonly number[] =>
    referencesOf(formula).flatMap(({ sheet: name, range }) => {
      const sheet = name ?? own.name;
      const { top, left, bottom, right } = range;
      if (top === bottom && left === right) return bySpot.get(keyOf(sheet, top, left)) ?? [];
      return cells.flatMap((cell, at) => {
        const isThere = cell.sheet.name.toLowerCase() === sheet.toLowerCase();
        return isThere && contains(range, cell.row, cell.column) ? [at] : [];
      });
    });
}

/** The formulas that calculate with some cells, by the place of each in the list. */
export function numericReaders(
  workbook: Workbook,
  cells: readonly CellOf[],
): readonly (readonly Reader[])[] {
  const readers: Reader[][] = cells.map(() => []);
  if (cells.length === 0) return readers;
  const readBy = lookup(cells);
  let left = MOST_FORMULAS;
  for (const sheet of workbook.sheets) {
    eachFormula(sheet, (row, column, { formula, value }) => {
      if (formula === undefined || left <= 0) return;
      left -= 1;
      if (AS_TEXT.test(formula) || !CALCULATES.test(formula)) return;
      for (const at of readBy(formula, sheet))
        readers[at]?.push({ sheet, row, column, formula, value });
    });
  }
  return readers;
}
