import { eachCell } from "../../../src/workbook/eachCell";
import type { Workbook, WorkbookSheet } from "../../../src/workbook/model";
import type { MarkedBook } from "../marks";
import { rearranged, type Arrangement } from "./rearranged";
import type { Restatement } from "./restatement";

const TURNED: Arrangement = {
  to: ({ row, column }) => ({ row: column, column: row }),
  from: ({ row, column }) => ({ row: column, column: row }),
  turns: true,
};

/** Formulas that go by columns, and cannot be turned by turning what they read. */
const BY_COLUMN =
  /\b(?:[VH]?LOOKUP|INDEX|OFFSET|ROWS?|COLUMNS?)\(|\[|(?<!\d)\b\$?[A-Z]{1,3}:\$?[A-Z]/;

function goesByColumns({ sheets }: Workbook): boolean {
  let found = false;
  for (const sheet of sheets) {
    eachCell(sheet, (_row, _column, { formula = "" }) => {
      found ||= BY_COLUMN.test(formula);
    });
  }
  return found;
}

const isPlain = ({ hiddenRows, hiddenColumns, merged, tables, filtered }: WorkbookSheet) =>
  [hiddenRows.size, hiddenColumns.size, merged.length, tables.length].every((n) => n === 0) &&
  (filtered ?? []).length === 0;

/** The one sheet with recipes, all of them down, and nothing that keeps it from being turned. */
function sheetToTurn(
  workbook: Workbook,
  { recipes, solutions, ownLines }: MarkedBook,
): WorkbookSheet | null {
  const names = new Set(recipes.flatMap((recipe) => recipe.names.map(({ sheet }) => sheet)));
  const [name] = names;
  const sheet = workbook.sheets.find((each) => each.name === name);
  if (names.size !== 1 || sheet === undefined || !isPlain(sheet)) return null;
  const areDown = recipes.every(({ names: all }) =>
    all.every(({ column }) => column === all[0]!.column),
  );
  const hasOther =
    solutions.length > 0 ||
    ownLines.some((line) => Object.values(line).some((spot) => spot.sheet === name));
  return areDown && !hasOther && !goesByColumns(workbook) ? sheet : null;
}

/** Rows become columns: what stood down stands across. */
export const turned: Restatement = {
  name: "turned",
  restate: (book, marked) => {
    const turn = sheetToTurn(book.workbook, marked);
    return turn === null ? book : rearranged(book, (name) => (name === turn.name ? TURNED : null));
  },
};
