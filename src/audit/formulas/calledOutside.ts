import { eachFormula } from "../../workbook/eachFormula";
import type { WorkbookSheet } from "../../workbook/model";
import { NAMESPACE } from "../../worksheet/namespace";
import type { Place } from "../recipes/recipeBlock";

/** A formula that calls more than the spreadsheet's own arithmetic. */
export interface FormulaCell extends Place {
  /** As written; of a shared formula the text of its first cell. */
  readonly formula: string;
}

const CALLS_OUTSIDE = new RegExp(
  `_xl|WEBSERVICE|HYPERLINK|IMPORT|RTD|DDE|\\||\\b${NAMESPACE}\\.`,
  "i",
);

const known = new WeakMap<WorkbookSheet, readonly FormulaCell[]>();

/** The formulas of a sheet that call add-ins, the internet or programs, collected once. */
export function calledOutside(sheet: WorkbookSheet): readonly FormulaCell[] {
  const before = known.get(sheet);
  if (before !== undefined) return before;
  const found: FormulaCell[] = [];
  eachFormula(sheet, (row, column, cell) => {
    const formula = cell.sharedFormula ?? cell.formula;
    if (formula !== undefined && CALLS_OUTSIDE.test(formula)) found.push({ row, column, formula });
  });
  known.set(sheet, found);
  return found;
}
