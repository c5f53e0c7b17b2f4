import { parseRangeName } from "../../workbook/address";
import { moveFormula } from "../../workbook/moveFormula";
import { replaceReferences } from "../../workbook/replaceReferences";

/** How a formula reads when it stands so many rows farther down and columns farther right. */
export type Move = (formula: string, rowsDown: number, columnsRight: number) => string;

/** Whether an address reads one of some rows. */
function isIn(top: number, bottom: number, address: string): boolean {
  const range = parseRangeName(address.replaceAll("$", ""));
  return range !== null && range.bottom >= top && range.top <= bottom;
}

/**
 * A summary that lists what stands in the columns of another table, one below the other: what it reads there moves a
 * column for every row, and what it reads in its own rows, from `top` to `bottom`, moves along.
 */
export const movedAcross =
  (top: number, bottom: number): Move =>
  (formula, rowsDown, columnsRight) =>
    replaceReferences(formula, ({ written, sheet, address }) =>
      sheet === null && isIn(top, bottom, address)
        ? moveFormula(written, rowsDown, columnsRight)
        : moveFormula(written, columnsRight, rowsDown),
    );
