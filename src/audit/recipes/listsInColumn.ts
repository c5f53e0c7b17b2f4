import { holdsNumber, textAt } from "./cells";
import { continuedLists, keyOf } from "./continuedLists";
import type { FinderContext } from "./finderContext";
import { headerRole } from "./headings/headerRole";
import { saysKind } from "./headings/saysKind";
import { guessedHeader } from "./guessedHeader";
import { columnsBeside, segmentsOf, type Segment } from "./segments";
import { runs } from "./sheetTexts";
import { cutAfterSums } from "./totals/cutAfterSums";
import { isKnownName } from "./totals/itemsAndTotals";

/** Longer lists than any recipe are ledgers; they are cut at their blank rows and what stays long is left. */
const LONGEST = 300;
/** A header stands at most so far above the lists that go on under it. */
const REACH = 60;

const shortened = (run: number[]): number[][] => (run.length <= LONGEST ? [run] : runs(run, 0));

/** The list under the header of one above it, where it has none and names a recipe of its own on its left. */
function underHeader(context: FinderContext, list: Segment, above: Segment | null): Segment {
  const { sheet } = context;
  const { column, rows } = list;
  const [row = 0, second = 0] = rows;
  const header = above?.headerRow ?? null;
  if (header === null || list.headerRow !== null || row - header > REACH) return list;
  const title = keyOf(sheet, row, column);
  const isList = [row, second].every((at) => isKnownName(context, textAt(sheet, at, column)));
  const hasAmount = columnsBeside(list).some(
    (at) => headerRole(textAt(sheet, header, at)) === "amount" && holdsNumber(sheet, row, at),
  );
  if (title === "" || saysKind(title) || !isList || !hasAmount) return list;
  if (guessedHeader(sheet, list).headerRow !== null) return list;
  return { ...list, headerRow: header, isContinued: true, title };
}

/** The lists whose names stand in a column, by the rows in which it has words. */
export function listsInColumn(
  context: FinderContext,
  column: number,
  rows: readonly number[],
): readonly Segment[] {
  let headed: Segment | null = null;
  const lists: Segment[] = [];
  for (const run of runs(rows, 1).flatMap(shortened)) {
    const parts = segmentsOf(context.sheet, column, run);
    for (const found of parts.flatMap((part) => cutAfterSums(context.sheet, part))) {
      const segment = underHeader(context, found, headed);
      if (segment.headerRow !== null) headed = segment;
      lists.push(...continuedLists(context, segment));
    }
  }
  return lists.filter(({ rows: own }) => own.length <= LONGEST);
}
