import { eachCell } from "../../workbook/eachCell";
import type { WorkbookSheet } from "../../workbook/model";

/** Cells one below the other that hold numbers or formulas, in every row or in every second one. */
export interface Run {
  readonly column: number;
  readonly top: number;
  bottom: number;
  /** Rows from one cell to the next: two where a line of words stands between; null of a single cell. */
  step: 1 | 2 | null;
  formulas: number;
}

const LEAST_FORMULAS = 3;
/** Longer columns are ledgers; what stands in them is looked at where they hold recipes. */
const LONGEST = 5000;
/** The step from a run to the next cell of its column when that goes on with it, else null. */
function stepTo(run: Run | undefined, row: number): 1 | 2 | null {
  const step = row - (run?.bottom ?? Number.NEGATIVE_INFINITY);
  if (step !== 1 && step !== 2) return null;
  return run?.step === null || run?.step === step ? step : null;
}

/**
 * The run that a cell may go on with: one number above the heading of a column does not set the step to its first
 * line, which then begins a run of its own.
 */
function startedAnew(sheet: WorkbookSheet, run: Run | undefined, row: number): Run | undefined {
  if (run?.step !== 2 || run.bottom - run.top !== 2 || row !== run.bottom + 1) return run;
  const { column, bottom } = run;
  const cell = sheet.cellAt(bottom, column);
  const isFormula = cell?.formula !== undefined;
  return { column, top: bottom, bottom, step: null, formulas: isFormula ? 1 : 0 };
}

/** The columns of numbers and formulas of a sheet that hold at least three formulas. */
export function runsOf(sheet: WorkbookSheet): Run[] {
  const open = new Map<number, Run>();
  const runs: Run[] = [];
  eachCell(sheet, (row, column, cell) => {
    const isFormula = (cell.sharedFormula ?? cell.formula) !== undefined;
    if (!isFormula && typeof cell.value !== "number") return;
    const before = startedAnew(sheet, open.get(column), row);
    const step = stepTo(before, row);
    const run =
      before !== undefined && step !== null
        ? before
        : { column, top: row, bottom: row, step: null, formulas: 0 };
    if (run === before) run.step = step;
    run.bottom = row;
    if (isFormula) run.formulas += 1;
    if (run === open.get(column)) return;
    open.set(column, run);
    runs.push(run);
  });
  return runs.filter(
    ({ top, bottom, formulas }) => formulas >= LEAST_FORMULAS && bottom - top < LONGEST,
  );
}
