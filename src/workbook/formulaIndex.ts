import { overlaps } from "./references";
import { eachFormula } from "./eachFormula";
import type { CellRange, Workbook } from "./model";
import type { SheetRange } from "./precedents";

export interface FormulaCell {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

/**
 * Hands out the formulas whose values lie in a block of cells, spilled ones included; each formula once,
 * so that a thousand running sums over one column cost no more than one.
 */
export type TakeFormulas = (block: SheetRange) => readonly FormulaCell[];

interface Spilling {
  readonly cell: FormulaCell;
  readonly area: CellRange;
}

interface SheetFormulas {
  /** By column, in the order of their rows. */
  readonly columns: Map<number, FormulaCell[]>;
  spilling: Spilling[];
}

/** The first place in an ordered column at or below a row. */
function firstFrom(cells: readonly FormulaCell[], row: number): number {
  let [low, high] = [0, cells.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((cells[middle]?.row ?? Infinity) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

function collect(workbook: Workbook): SheetFormulas[] {
  return workbook.sheets.map((content, sheet) => {
    const found: SheetFormulas = { columns: new Map(), spilling: [] };
    eachFormula(content, (row, column, { formula, spills }) => {
      if (formula === undefined) return;
      const cell = { sheet, row, column, formula };
      const cells = found.columns.get(column);
      if (cells === undefined) found.columns.set(column, [cell]);
      else cells.push(cell);
      if (spills !== undefined) found.spilling.push({ cell, area: spills });
    });
    return found;
  });
}

export function indexFormulas(workbook: Workbook): TakeFormulas {
  const sheets = collect(workbook);
  return ({ sheet, range }) => {
    const formulas = sheets[sheet];
    if (formulas === undefined) return [];
    const taken: FormulaCell[] = [];
    for (const [column, cells] of formulas.columns) {
      if (column < range.left || column > range.right) continue;
      const first = firstFrom(cells, range.top);
      taken.push(...cells.splice(first, firstFrom(cells, range.bottom + 1) - first));
    }
    const reached = formulas.spilling.filter(({ area }) => overlaps(area, range));
    formulas.spilling = formulas.spilling.filter(({ area }) => !overlaps(area, range));
    return [...taken, ...reached.map(({ cell }) => cell)];
  };
}
