import type { WorkbookSheet } from "../../workbook/model";
import { holdsNumber, textAt } from "./cells";
import type { FinderContext } from "./finderContext";
import { headerRole } from "./headings/headerRole";
import { ANSWER_ROLES, isKnownName } from "./totals/itemsAndTotals";
import { columnsBeside, type Segment } from "./segments";

/** Of the first lines of a list so many are known at least, and have numbers beside them. */
const [FIRST_LINES, LEAST_KNOWN] = [4, 2];

/** What the columns left of a list's names say of a line: which recipe it is of. */
const keyOf = (sheet: WorkbookSheet, row: number, column: number): string =>
  [1, 2, 3].map((step) => textAt(sheet, row, column - step)).find((text) => text !== "") ?? "";

/** Whether a list of ingredients begins in the first of some rows. */
function begins(context: FinderContext, segment: Segment, rows: readonly number[]): boolean {
  const { sheet } = context;
  const { column } = segment;
  const beside = columnsBeside(segment);
  const known = rows
    .filter((row) => isKnownName(context, textAt(sheet, row, column)))
    .filter((row) => beside.some((at) => holdsNumber(sheet, row, at)));
  return known.length >= LEAST_KNOWN;
}

/**
 * The recipes of a list with one header for all of them, each followed by its answers: where after answers a column
 * to the left has other words and ingredients begin again, the next one begins.
 */
export function continuedLists(context: FinderContext, segment: Segment): Segment[] {
  const { sheet } = context;
  const { column, headerRow, rows } = segment;
  if (headerRow === null) return [segment];
  const lists: { rows: number[] }[] = [{ rows: [] }];
  let [isAnswered, key] = [false, ""];
  for (const [at, row] of rows.entries()) {
    const own = keyOf(sheet, row, column);
    if (
      isAnswered &&
      own !== "" &&
      own !== key &&
      begins(context, segment, rows.slice(at, at + FIRST_LINES))
    ) {
      lists.push({ rows: [] });
      isAnswered = false;
    }
    if (own !== "") key = own;
    const text = textAt(sheet, row, column);
    const role = headerRole(text);
    // Asked in this order, since a ledger has a hundred thousand names.
    if (role !== null && ANSWER_ROLES.has(role) && !isKnownName(context, text)) isAnswered = true;
    lists.at(-1)?.rows.push(row);
  }
  if (lists.length === 1) return [segment];
  return lists.map((list, at) => ({
    ...segment,
    ...list,
    isContinued: at > 0,
    title: keyOf(sheet, list.rows[0] ?? headerRow, column),
  }));
}
