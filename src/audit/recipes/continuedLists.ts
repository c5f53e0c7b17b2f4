import type { WorkbookSheet } from "../../workbook/model";
import { holdsNumber, isBlank, textAt } from "./cells";
import type { FinderContext } from "./finderContext";
import { headerRole } from "./headings/headerRole";
import { plainWords } from "./headings/plainWords";
import { saysKind } from "./headings/saysKind";
import { saysRecipe } from "./headings/saysRecipe";
import { ANSWER_ROLES, isKnownName } from "./totals/itemsAndTotals";
import { columnsBeside, type Segment } from "./segments";

/** Of the first lines of a list so many are known at least, and have numbers beside them. */
const [FIRST_LINES, LEAST_KNOWN] = [4, 2];
/** So many names that stand again one below the other are the list once more. */
const LEAST_AGAIN = 3;

/** The sum of a part of a recipe, after which it goes on. */
const OF_PART = /zwischen|sub-? ?total|partial|teil/i;

/** What the columns left of a list's names say of a line: which recipe it is of. */
export const keyOf = (sheet: WorkbookSheet, row: number, column: number): string =>
  [1, 2, 3].map((step) => textAt(sheet, row, column - step)).find((text) => text !== "") ?? "";

/** The rows among some in which an ingredient stands with a number beside it. */
function knownLines(
  context: FinderContext,
  segment: Segment,
  rows: readonly number[],
): readonly number[] {
  const { sheet } = context;
  const { column } = segment;
  const beside = columnsBeside(segment);
  return rows
    .filter((row) => isKnownName(context, textAt(sheet, row, column)))
    .filter((row) => beside.some((at) => holdsNumber(sheet, row, at)));
}

/** A list that is being gathered, and what has ended its ingredients so far. */
interface List {
  readonly rows: number[];
  /** The words that stand over it alone. */
  readonly title: string;
  readonly isAgain: boolean;
  readonly names: Set<string>;
  end: "answers" | "total" | null;
}

/** Whether the ingredients of the first of some rows stand in a list before. */
function repeats({ sheet }: FinderContext, { column }: Segment, rows: readonly number[]) {
  const names = rows.map((row) => plainWords(textAt(sheet, row, column)));
  return ({ names: before }: List): number => names.filter((name) => before.has(name)).length;
}

/** Whether after a total and a blank row the words left of a line name another recipe, not a part of the same. */
function isNextRecipe(
  { sheet }: FinderContext,
  { column, headerRow }: Segment,
  row: number,
  again: number,
): boolean {
  const place = [1, 2, 3].find((step) => textAt(sheet, row, column - step) !== "") ?? 1;
  const heading = textAt(sheet, headerRow ?? -1, column - place);
  if (!isBlank(sheet, row - 1, column)) return false;
  if (saysKind(heading) || saysKind(keyOf(sheet, row, column))) return false;
  // Parts of one recipe share no ingredients.
  return again > 0 || saysRecipe(heading) || headerRole(heading) === "name";
}

/** Words with no number beside them after a blank row, and an ingredient right below: the title of a recipe. */
function isTitle(
  { sheet }: FinderContext,
  segment: Segment,
  row: number,
  known: readonly number[],
): boolean {
  const role = headerRole(textAt(sheet, row, segment.column));
  const isOfNumber = columnsBeside(segment).some((at) => holdsNumber(sheet, row, at));
  return (
    !isOfNumber &&
    (role === null || role === "amount") &&
    isBlank(sheet, row - 1, segment.column) &&
    known[0] === row + 1
  );
}

/** How a row begins another list than the one before: as another recipe, as the same ones again, or not at all. */
function beginning(
  context: FinderContext,
  segment: Segment,
  rows: readonly number[],
  { list, key }: { readonly list: List; readonly key: string },
): "next" | "again" | null {
  const [row] = rows;
  if (list.end === null || row === undefined) return null;
  const own = keyOf(context.sheet, row, segment.column);
  const known = knownLines(context, segment, rows.slice(0, FIRST_LINES));
  const again = repeats(context, segment, known)(list);
  if (own === "") {
    const isTitled = known.length >= LEAST_KNOWN && isTitle(context, segment, row, known);
    if (isTitled && list.end === "answers") return "next";
    if (segment.headerRow === null) return null;
    const isAgain = known[0] === row && again >= LEAST_AGAIN && list.end === "answers";
    return isAgain ? "again" : null;
  }
  if (segment.headerRow === null || own === key || known.length < LEAST_KNOWN) return null;
  const isNext = list.end === "answers" || isNextRecipe(context, segment, row, again);
  return isNext ? "next" : null;
}

const emptyList = (isAgain = false, title = ""): List => ({
  ...{ rows: [], title, isAgain },
  ...{ names: new Set(), end: null },
});

/**
 * The recipes of a list with one header for all of them, each followed by its answers or its total: where a column
 * to the left has other words and ingredients begin again, the next one begins; where the same names begin again,
 * the same recipes in another amount. Lists without a header, each with its title, are cut before those.
 */
export function continuedLists(context: FinderContext, segment: Segment): Segment[] {
  const { sheet } = context;
  const { column, headerRow, rows } = segment;
  const lists = [emptyList()];
  let key = "";
  for (const [at, row] of rows.entries()) {
    let list = lists.at(-1) ?? emptyList();
    const begun =
      list.end === null
        ? null
        : beginning(context, segment, rows.slice(at, at + FIRST_LINES), { list, key });
    const text = textAt(sheet, row, column);
    const own = keyOf(sheet, row, column);
    if (begun !== null) lists.push((list = emptyList(begun === "again", own === "" ? text : "")));
    key = own || key;
    const role = headerRole(text);
    // Asked in this order, since a ledger has a hundred thousand names.
    if (role === null || isKnownName(context, text)) list.names.add(plainWords(text));
    else if (ANSWER_ROLES.has(role) && list.names.size >= LEAST_KNOWN) list.end = "answers";
    else if (role === "total" && !OF_PART.test(text)) list.end ??= "total";
    list.rows.push(row);
  }
  if (lists.length === 1) return [segment];
  if (headerRow === null) return lists.map(({ rows: own }) => ({ ...segment, rows: own }));
  return lists.map(({ rows: own, title, isAgain }, at) => ({
    ...segment,
    rows: own,
    isContinued: at > 0 || segment.isContinued === true,
    isAgain,
    ...(!isAgain && { title: title || keyOf(sheet, own[0] ?? headerRow, column) }),
  }));
}
