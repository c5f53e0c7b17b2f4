import type { CellRange, WorkbookCell } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";

const SUM_OF_RANGE = /^\s*SUM\s*\(\s*\$?[A-Z]{1,3}\$?\d+:\$?[A-Z]{1,3}\$?\d+\s*\)\s*$/i;

/** What a cell adds up where it does nothing else: one range of its own sheet; null for all other cells. */
export function sumOfRange(cell: WorkbookCell): CellRange | null {
  // A shared formula is moved to its cell only when it is such a sum.
  if (!SUM_OF_RANGE.test(cell.sharedFormula ?? cell.formula ?? "")) return null;
  return referencesOf(cell.formula ?? "")[0]?.range ?? null;
}
