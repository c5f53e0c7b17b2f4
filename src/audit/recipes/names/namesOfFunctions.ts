import { eachCell } from "../../../workbook/eachCell";
import type { CellRange, WorkbookSheet } from "../../../workbook/model";
import { contains, referencesOf } from "../../../workbook/references";
import type { Place } from "../recipeBlock";

/** Functions that take a range of names first and one of amounts after it. */
const OF_MIX = /\bRIME\.[A-Z]+\(\s*\$?[A-Z]{1,3}\$?\d+:/i;
const MOST_FORMULAS = 200;

const known = new WeakMap<WorkbookSheet, readonly CellRange[]>();

function rangesOf(sheet: WorkbookSheet): readonly CellRange[] {
  const before = known.get(sheet);
  if (before !== undefined) return before;
  const ranges: CellRange[] = [];
  eachCell(sheet, (_row, _column, cell) => {
    const formula = cell.sharedFormula ?? cell.formula;
    if (formula === undefined || ranges.length >= MOST_FORMULAS || !OF_MIX.test(formula)) return;
    const [names] = referencesOf(formula);
    if (names?.sheet === null) ranges.push(names.range);
  });
  known.set(sheet, ranges);
  return ranges;
}

/** Whether a function of this add-in takes some cells for the names of a mix: then they are, known or not. */
export const areNamesOfFunction = (sheet: WorkbookSheet, names: readonly Place[]): boolean =>
  names.length > 1 &&
  rangesOf(sheet).some((range) => names.every(({ row, column }) => contains(range, row, column)));
