import { isNumbering } from "./amounts/isNumbering";
import { holdsNumber, isBlank, textAt } from "./cells";
import type { FinderContext } from "./finderContext";
import type { Segment } from "./segments";

/** Names stand at most this far right of their amounts, over a column of units. */
const REACH = 2;
/** An empty column that ends a list is looked for so far right of its names. */
const FARTHEST = 4;

/** The rows, two at least, in which a column has numbers that are no numbering; none where they are few. */
function amountRows({ sheet }: FinderContext, rows: readonly number[], column: number) {
  const filled = column < 0 ? [] : rows.filter((row) => holdsNumber(sheet, row, column));
  const values = filled.map((row) => sheet.cellAt(row, column)?.value);
  return filled.length < 2 || isNumbering(values) ? [] : filled;
}

/** Whether amounts stand in a column, with names that are known right of them. */
function isAmountsOfNames(
  context: FinderContext,
  rows: readonly number[],
  column: number,
): boolean {
  const { sheet, check } = context;
  const filled = amountRows(context, rows, column);
  const isName = (row: number, at: number) => {
    const text = textAt(sheet, row, at);
    return text !== "" && check(text).kind !== "unknown";
  };
  return Array.from({ length: REACH }, (_, step) => column + 1 + step).some(
    (at) => filled.filter((row) => isName(row, at)).length * 2 > Math.max(filled.length, 2),
  );
}

/**
 * The empty column behind a list whose amounts stand left of its names, where another such list begins behind it:
 * "500 | g | milk | | 300 | g | water"; null where none does.
 */
export function endOfList(
  context: FinderContext,
  { column, rows }: Pick<Segment, "column" | "rows">,
): number | null {
  const isBesideAmounts = [column - 1, column - 2].some(
    (at) => amountRows(context, rows, at).length * 2 >= rows.length,
  );
  if (!isBesideAmounts) return null;
  const isFree = (at: number) => rows.every((row) => isBlank(context.sheet, row, at));
  const places = Array.from({ length: FARTHEST }, (_, step) => column + 1 + step);
  const free = places.find(isFree);
  return free !== undefined && isAmountsOfNames(context, rows, free + 1) ? free : null;
}
