import type { WorkbookSheet } from "../../../workbook/model";
import { looksNumeric } from "../cells";
import type { Role } from "../headings/headerRole";
import type { RecipeName } from "../recipeBlock";

/** The headers of a row of ingredients, sorted. */
export interface Headers {
  readonly names: readonly RecipeName[];
  readonly totals: readonly number[];
  readonly roles: ReadonlyMap<number, Role>;
}

const MAY_BE_NAMES = new Set<Role>(["other", "amount"]);
const ROWS_READ = 5;
/** What only the last of a few recipes takes is blank above. */
const ROWS_LOOKED_THROUGH = 12;
const CLOSE = 0.003;

const numberAt = (sheet: WorkbookSheet, row: number, column: number): number => {
  const value = sheet.cellAt(row, column)?.value;
  return typeof value === "number" ? value : 0;
};

/** Whether the totals come out only when a column is counted with the names. */
function isSummedUp(
  sheet: WorkbookSheet,
  first: number,
  column: number,
  headers: Headers,
): boolean {
  const [total] = headers.totals;
  if (total === undefined) return false;
  const rows = Array.from({ length: ROWS_READ }, (_, step) => first + step);
  const told = rows.filter((row) => {
    const without = headers.names.reduce((sum, one) => sum + numberAt(sheet, row, one.column), 0);
    const own = numberAt(sheet, row, column);
    return own > 0 && Math.abs((without + own) / numberAt(sheet, row, total) - 1) < CLOSE;
  });
  const filled = rows.filter((row) => numberAt(sheet, row, column) > 0);
  return told.length > 0 && told.length === filled.length;
}

/**
 * Columns that are ingredients whatever else their headers may head, like "stock no. 17" or "batch syrup": they
 * hold amounts between two names, or the totals count them.
 */
export function namesInDisguise(
  sheet: WorkbookSheet,
  first: number,
  headers: Headers,
): readonly number[] {
  const columns = headers.names.map(({ column }) => column);
  const [from, to] = [Math.min(...columns), Math.max(...columns)];
  const isAmong = (column: number) => column > from && column < to;
  const holdsAmounts = (column: number) =>
    Array.from({ length: ROWS_LOOKED_THROUGH }, (_, step) => first + step).some((row) =>
      looksNumeric(sheet, row, column),
    );
  return [...headers.roles]
    .filter(([column, role]) => MAY_BE_NAMES.has(role) && holdsAmounts(column))
    .map(([column]) => column)
    .filter((column) => isAmong(column) || isSummedUp(sheet, first, column, headers));
}
