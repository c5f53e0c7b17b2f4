import { ALL_IMPLEMENTED_FUNCTIONS_SET } from "@univerjs/engine-formula";
import { worksheetFunctions } from "../worksheet/functions";
import { calledFunctions } from "./calledFunctions";
import { indexFormulas, type FormulaCell } from "./formulaIndex";
import type { Workbook, WorkbookValue } from "./model";
import { precedentsIn, type SheetRange } from "./precedents";
import { gridFunctionOf, type GridFunction } from "./univer/gridFunction";
import { openHeadlessGrid } from "./univer/headlessGrid";
import { referencedSheets } from "./univer/referencedSheets";

/** A formula that keeps its stored value, and why. */
export interface LeftAlone {
  readonly cell: FormulaCell;
  readonly reason: string;
}

export interface Recalculation {
  /** The fresh value of a cell (sheet, row and column from zero); undefined when it was not calculated. */
  readonly valueAt: (sheet: number, row: number, column: number) => WorkbookValue | undefined;
  readonly calculated: readonly FormulaCell[];
  readonly leftAlone: readonly LeftAlone[];
  /** False when more formulas feed the cells than are calculated. */
  readonly isComplete: boolean;
}

/** The grid's engine takes seconds for more, so that an audit would be waited for. */
export const MOST_FORMULAS = 10_000;

const CHANGES_BY_ITSELF = new Set(["NOW", "TODAY", "RAND", "RANDBETWEEN", "RANDARRAY"]);

function reasonToLeave(
  { formula }: FormulaCell,
  workbook: Workbook,
  functions: ReadonlySet<string>,
): string | null {
  const called = calledFunctions(formula);
  const unknown = called.find((name) => !functions.has(name.toUpperCase()));
  if (unknown !== undefined) return `The function ${unknown} is not known here.`;
  if (called.some((name) => CHANGES_BY_ITSELF.has(name.toUpperCase()))) {
    return "It gives something else at every calculation.";
  }
  const sheets = new Set(workbook.sheets.map(({ name }) => name.toLowerCase()));
  const missing = referencedSheets(formula).find((name) => !sheets.has(name.toLowerCase()));
  return missing === undefined ? null : `It reads "${missing}", which is not in this workbook.`;
}

const keyOf = (sheet: number, row: number, column: number): string => `${sheet}:${row}:${column}`;

const reads = ({ sheet, range }: SheetRange, cell: FormulaCell): boolean =>
  sheet === cell.sheet &&
  range.top <= cell.row &&
  cell.row <= range.bottom &&
  range.left <= cell.column &&
  cell.column <= range.right;

interface Feeding {
  readonly calculated: FormulaCell[];
  readonly leftAlone: LeftAlone[];
  readonly isComplete: boolean;
}

/** The formulas in the given blocks and all that feed them, nearest first. */
function feeding(
  workbook: Workbook,
  blocks: readonly SheetRange[],
  known: ReadonlySet<string>,
): Feeding {
  const [precedentsOf, takeFormulas] = [precedentsIn(workbook), indexFormulas(workbook)];
  const seen = new Set<string>();
  const seenBlocks = new Set<string>();
  const queue = [...blocks];
  const found: Feeding = { calculated: [], leftAlone: [], isComplete: true };
  for (let next = 0; next < queue.length; next += 1) {
    const block = queue[next];
    if (block === undefined || seenBlocks.has(JSON.stringify(block))) continue;
    seenBlocks.add(JSON.stringify(block));
    for (const cell of takeFormulas(block)) {
      const key = keyOf(cell.sheet, cell.row, cell.column);
      if (seen.has(key)) continue;
      if (found.calculated.length >= MOST_FORMULAS) return { ...found, isComplete: false };
      seen.add(key);
      const reason = reasonToLeave(cell, workbook, known);
      const precedents = reason === null ? precedentsOf(cell.sheet, cell.formula) : [];
      if (reason !== null) found.leftAlone.push({ cell, reason });
      else if (precedents.some((read) => reads(read, cell))) {
        found.leftAlone.push({ cell, reason: "It reads its own cell." });
      } else {
        found.calculated.push(cell);
        queue.push(...precedents);
      }
    }
  }
  return found;
}

/**
 * Calculates the formulas in the given blocks anew, and the formulas that feed them, at most 10,000; all
 * other cells are taken at their stored value. The workbook is not changed.
 */
export async function recalculate(
  workbook: Workbook,
  blocks: readonly SheetRange[],
  functions: readonly GridFunction[] = worksheetFunctions.map(gridFunctionOf),
): Promise<Recalculation> {
  const known = new Set<string>(
    [...ALL_IMPLEMENTED_FUNCTIONS_SET, "SINGLE", "ANCHORARRAY", "LAMBDA", "LET"].map(String),
  );
  for (const { name } of functions) known.add(name.toUpperCase());
  const { calculated, leftAlone, isComplete } = feeding(workbook, blocks, known);
  const kept = new Set(calculated.map(({ sheet, row, column }) => keyOf(sheet, row, column)));
  const grid = openHeadlessGrid(workbook, functions, (sheet, row, column) =>
    kept.has(keyOf(sheet, row, column)),
  );
  const valueAt = await grid.recalculate();
  const fresh = new Map(
    calculated.map(({ sheet, row, column }) => [
      keyOf(sheet, row, column),
      valueAt(sheet, row, column),
    ]),
  );
  grid.close();
  return {
    valueAt: (sheet, row, column) => fresh.get(keyOf(sheet, row, column)),
    calculated,
    leftAlone,
    isComplete,
  };
}
