import { parseRangeName } from "../../workbook/address";
import type { CellRange, WorkbookCell } from "../../workbook/model";

const SUM_OF_RANGE = /^\s*SUM\s*\(\s*(\$?[A-Z]{1,3}\$?\d+:\$?[A-Z]{1,3}\$?\d+)\s*\)\s*$/i;

/** What a cell adds up where it does nothing else: one range of its own sheet; null for all other cells. */
export function sumOfRange(cell: WorkbookCell): CellRange | null {
  // A shared formula is moved to its cell only when it is such a sum.
  if (cell.sharedFormula !== undefined && !SUM_OF_RANGE.test(cell.sharedFormula)) return null;
  const [, range] = SUM_OF_RANGE.exec(cell.formula ?? "") ?? [];
  return range === undefined ? null : parseRangeName(range.replaceAll("$", ""));
}
