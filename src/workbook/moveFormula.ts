import { columnIndex, columnName, MAX_COLUMNS, MAX_ROWS } from "./address";

// Texts, quoted sheet names and table columns are passed over; then a cell, whole columns or whole rows,
// standing free: not part of a longer name, not a function ("LOG10("), not a sheet ("AB1!").
const REFERENCE =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'|\[[^\]]*\]|(?<![\w.$\\])(?:(\$?)([A-Z]{1,3})(\$?)(\d{1,7})|(\$?)([A-Z]{1,3}):(\$?)([A-Z]{1,3})|(\$?)(\d{1,7}):(\$?)(\d{1,7}))(?![\w.(!])/gi;

const BROKEN = "#REF!";

function movedColumn(dollar: string, letters: string, by: number): string | null {
  const column = columnIndex(letters) + (dollar === "$" ? 0 : by);
  return column >= 0 && column < MAX_COLUMNS ? dollar + columnName(column) : null;
}

function movedRow(dollar: string, digits: string, by: number): string | null {
  const row = Number(digits) + (dollar === "$" ? 0 : by);
  return row >= 1 && row <= MAX_ROWS ? `${dollar}${row}` : null;
}

const joined = (separator: string, first: string | null, second: string | null): string =>
  first === null || second === null ? BROKEN : first + separator + second;

/** A formula copied some rows down and columns right: its relative references move along. */
export function moveFormula(formula: string, rowsDown: number, columnsRight: number): string {
  return formula.replace(REFERENCE, (token: string, ...groups: (string | undefined)[]) => {
    const [d1, column, d2, row, d3, from, d4, to, d5, firstRow, d6, lastRow] = groups;
    const c = (dollar = "", letters = "") => movedColumn(dollar, letters, columnsRight);
    const r = (dollar = "", digits = "") => movedRow(dollar, digits, rowsDown);
    if (column !== undefined) return joined("", c(d1, column), r(d2, row));
    if (from !== undefined) return joined(":", c(d3, from), c(d4, to));
    if (firstRow !== undefined) return joined(":", r(d5, firstRow), r(d6, lastRow));
    return token;
  });
}
