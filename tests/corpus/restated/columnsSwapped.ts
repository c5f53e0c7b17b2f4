import type { CellRange, Workbook, WorkbookSheet } from "../../../src/workbook/model";
import { eachCell } from "../../../src/workbook/eachCell";
import { contains, overlaps, referencesOf } from "../../../src/workbook/references";
import type { MarkedBook, MarkedRecipe } from "../marks";
import { rearranged, type Arrangement, type Place } from "./rearranged";
import type { Restatement } from "./restatement";

/** Two columns of a list, headings and total and all. */
interface Pair {
  readonly one: CellRange;
  readonly other: CellRange;
}

const hasText = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  column >= 0 && typeof sheet.cellAt(row, column)?.value === "string";

/** The amounts of a list and the column beside them, names apart. */
function pairIn(
  sheet: WorkbookSheet,
  { names, amounts, amountLabel, shared }: MarkedRecipe,
  recipes: readonly MarkedRecipe[],
): Pair | null {
  // Answers stand below each of several recipes beside one list of names, and would have to move along.
  if (shared) return null;
  const [nameColumn, column] = [names[0]!.column, amounts[0]!.column];
  const isDown =
    names.every((name) => name.column === nameColumn) &&
    [...amounts, amountLabel].every((spot) => spot?.column === column);
  if (!isDown || amountLabel === null) return null;
  const beside = [column + 1, column - 1].find(
    (at) => at !== nameColumn && hasText(sheet, amountLabel.row, at),
  );
  if (beside === undefined || amountLabel.row >= names[0]!.row) return null;
  // Recipes one below the other may have one heading.
  const headed = recipes.filter(
    ({ amountLabel: own }) => own?.sheet === sheet.name && own.row === amountLabel.row,
  );
  const rows = headed
    .flatMap(({ names: all, total }) => [...all, ...(total === null ? [] : [total])])
    .map(({ row }) => row);
  const ends = { top: amountLabel.row, bottom: Math.max(...rows) };
  return {
    one: { ...ends, left: column, right: column },
    other: { ...ends, left: beside, right: beside },
  };
}

const isWithin = (range: CellRange, whole: CellRange): boolean =>
  contains(whole, range.top, range.left) && contains(whole, range.bottom, range.right);

/** Whether both columns are seen, and all that reads one of them reads nothing beside it, so that it can follow. */
function canFollow({ sheets }: Workbook, { name, ...sheet }: WorkbookSheet, pair: Pair): boolean {
  const columns = [pair.one, pair.other];
  if (columns.some(({ left }) => sheet.hiddenColumns.has(left))) return false;
  const isClear = (range: CellRange) =>
    columns.every((column) => !overlaps(range, column) || isWithin(range, column));
  let isFit = sheet.merged.every((range) => columns.every((column) => !overlaps(range, column)));
  for (const home of sheets) {
    eachCell(home, (_row, _column, { formula = "" }) => {
      const read = referencesOf(formula).filter((each) => (each.sheet ?? home.name) === name);
      if (!read.every(({ range }) => isClear(range))) isFit = false;
    });
  }
  return isFit && sheet.tables.every(({ range }) => columns.every((c) => !overlaps(range, c)));
}

function swap({ one, other }: Pair): Arrangement {
  const to = ({ row, column }: Place): Place => {
    if (contains(one, row, column)) return { row, column: other.left };
    return contains(other, row, column) ? { row, column: one.left } : { row, column };
  };
  return { to, from: to };
}

/** The amounts of the first recipe change places with the column beside them. */
export const columnsSwapped: Restatement = {
  name: "columns in another order",
  restate: (book, { recipes }: MarkedBook) => {
    const [recipe] = recipes;
    const sheet = book.workbook.sheets.find(({ name }) => name === recipe?.names[0]!.sheet);
    if (recipe === undefined || sheet === undefined) return book;
    const pair = pairIn(sheet, recipe, recipes);
    if (pair === null || !canFollow(book.workbook, sheet, pair)) return book;
    return rearranged(book, (name) => (name === sheet.name ? swap(pair) : null));
  },
};
