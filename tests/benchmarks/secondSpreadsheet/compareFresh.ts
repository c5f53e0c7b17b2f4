import { isProblem } from "../../../src/foundation/problem";
import { cellName } from "../../../src/workbook/address";
import { recalculate } from "../../../src/workbook/evaluate";
import type { FormulaCell } from "../../../src/workbook/formulaIndex";
import type { Workbook, WorkbookValue } from "../../../src/workbook/model";
import { precedentsIn } from "../../../src/workbook/precedents";
import { readWorkbook } from "../../../src/workbook/readWorkbook";
import type { Recalculation } from "../../../src/workbook/recalculation";
import { isSame } from "../../corpus/bookDifferences";
import type { FileBook } from "../../corpus/fileCorpus";
import { toWorkbook } from "../../corpus/toWorkbook";
import { addTo, newTally, type Tally } from "./tally";

const RELATIVE = 1e-12;
/** What the other spreadsheet has no answer for: functions of ours, of another add-in, other workbooks. */
const NOT_ORDINARY = /RIME\.|_xll|\[\d+\]|\.xlsx\]|NOW\(|WEBSERVICE|HYPERLINK/i;

const allBlocks = ({ sheets }: Workbook) =>
  sheets.map(({ rowCount, columnCount }, sheet) => ({
    sheet,
    range: { top: 0, left: 0, bottom: rowCount - 1, right: columnCount - 1 },
  }));

const keyOf = ({ sheet, row, column }: Omit<FormulaCell, "formula">) => `${sheet}:${row}:${column}`;

/** The formulas that the other spreadsheet can answer, and so can all that they read. */
function ordinary(workbook: Workbook, { calculated, leftAlone }: Recalculation): FormulaCell[] {
  const precedentsOf = precedentsIn(workbook);
  const unanswered = calculated.filter(({ formula }) => NOT_ORDINARY.test(formula));
  const odd = new Set([...unanswered, ...leftAlone.map(({ cell }) => cell)].map(keyOf));
  const readsOdd = ({ sheet, formula }: FormulaCell): boolean =>
    precedentsOf(sheet, formula).some(({ sheet: other, range }) => {
      for (let row = range.top; row <= range.bottom; row += 1) {
        for (let column = range.left; column <= range.right; column += 1) {
          if (odd.has(keyOf({ sheet: other, row, column }))) return true;
        }
      }
      return false;
    });
  for (let before = -1; before !== odd.size;) {
    before = odd.size;
    for (const cell of calculated)
      if (!odd.has(keyOf(cell)) && readsOdd(cell)) odd.add(keyOf(cell));
  }
  return calculated.filter((cell) => !odd.has(keyOf(cell)));
}

type Value = WorkbookValue | undefined;

function compare(tally: Tally, title: string, where: string, [theirs, ours]: [Value, Value]): void {
  tally.cells += 1;
  if (isSame(theirs ?? null, ours ?? null, RELATIVE)) return;
  const line = `value ${where}: theirs ${JSON.stringify(theirs)}, ours ${JSON.stringify(ours)}`;
  addTo(tally, title, [{ kind: "value", line }]);
}

/** Holds what the other spreadsheet calculated against the grid's engine and that of the corpus. */
export async function compareFresh(
  books: readonly FileBook[],
  files: readonly Uint8Array[],
): Promise<readonly (readonly [string, Tally])[]> {
  const [grid, corpus] = [newTally(), newTally()];
  for (const [index, { title, book }] of books.entries()) {
    for (const tally of [grid, corpus]) tally.files += 1;
    const theirs = await readWorkbook(files[index]!);
    if (isProblem(theirs)) {
      for (const tally of [grid, corpus]) tally.unread.push(`${title}: ${theirs.message}`);
      continue;
    }
    const { workbook, recalculated } = toWorkbook(book);
    const ours = await recalculate(workbook, allBlocks(workbook));
    for (const cell of ordinary(workbook, ours)) {
      const { sheet, row, column, formula } = cell;
      const where = `${workbook.sheets[sheet]!.name}!${cellName(row, column)} =${formula}`;
      const value = theirs.sheets[sheet]?.cellAt(row, column)?.value;
      compare(grid, title, where, [value, ours.valueAt(sheet, row, column)]);
      const known = recalculated.valueAt(sheet, row, column);
      if (known !== undefined) compare(corpus, title, where, [value, known]);
    }
  }
  return [
    ["Calculated anew, held against the grid's engine", grid],
    ["Calculated anew, held against the corpus' engine", corpus],
  ];
}
