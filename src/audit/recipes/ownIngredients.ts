import type { Cell, Matrix } from "../../foundation/cell";
import { badInput, isProblem, type Problem } from "../../foundation/problem";
import type { CellRange, WorkbookSheet, WorkbookValue } from "../../workbook/model";
import { callFunction } from "../../worksheet/callFunction";
import { plainWords } from "./plainWords";

/** A header-led range of the user's own ingredients, ready to be handed to the recipe functions. */
export interface OwnIngredients {
  readonly sheet: WorkbookSheet;
  readonly range: CellRange;
  readonly matrix: Matrix;
  /** Why the functions refuse the range, if they do. */
  readonly problem: Problem | null;
  /** Rows that are refused for themselves: their names alone cannot be used. */
  readonly refusedRows: readonly { readonly row: number; readonly problem: Problem }[];
}

const STATES_WATER = /^(same as|water|solids|brix)$/;

/** Reads as far right as there are headers, in any order around the name. */
function headersAround(
  sheet: WorkbookSheet,
  row: number,
  column: number,
): { left: number; right: number } {
  const isHeader = (at: number) => typeof sheet.cellAt(row, at)?.value === "string";
  let left = column;
  let right = column;
  while (left > 0 && isHeader(left - 1)) left -= 1;
  while (isHeader(right + 1)) right += 1;
  return { left, right };
}

function asCell(value: WorkbookValue): Cell {
  return typeof value === "object" && value !== null ? badInput(value.error) : value;
}

function matrixOf(sheet: WorkbookSheet, { top, left, bottom, right }: CellRange): Matrix {
  return Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (_, c) =>
      asCell(sheet.cellAt(top + r, left + c)?.value ?? null),
    ),
  );
}

function problemWith(item: Cell, matrix: Matrix): Problem | null {
  const answer = callFunction("COMPONENT", [[item]], [[100]], "water", matrix)[0]?.[0];
  return isProblem(answer) ? answer : null;
}

function refusedRows(matrix: Matrix, nameAt: number, top: number) {
  return matrix.slice(1).flatMap((row, index) => {
    const problem = problemWith(row[nameAt] ?? null, matrix);
    return problem === null ? [] : { row: top + 1 + index, problem };
  });
}

/**
 * The own-ingredients range whose header "name" stands at a place: a header row with `name` and one of
 * `same as`, `water`, `solids`, `brix`, down to the first row without a name. Null when it is none.
 */
export function ownIngredientsAt(
  sheet: WorkbookSheet,
  row: number,
  column: number,
): OwnIngredients | null {
  const { left, right } = headersAround(sheet, row, column);
  const headers = Array.from({ length: right - left + 1 }, (_, at) => {
    const value = sheet.cellAt(row, left + at)?.value;
    return typeof value === "string" ? plainWords(value) : "";
  });
  if (!headers.some((header) => STATES_WATER.test(header))) return null;
  if (headers.some((header) => /amount|weight|menge|gewicht|^(g|kg|grams?|gramm)$/.test(header)))
    return null;
  let bottom = row;
  while (typeof sheet.cellAt(bottom + 1, column)?.value === "string") bottom += 1;
  if (bottom === row) return null;
  const range = { top: row, left, bottom, right };
  const matrix = matrixOf(sheet, range);
  const problem = problemWith("water", matrix);
  const refused = problem === null ? refusedRows(matrix, column - left, row) : [];
  return { sheet, range, matrix, problem, refusedRows: refused };
}
