import { circularCells } from "./circularCells";
import { indexFormulas, type FormulaCell } from "./formulaIndex";
import type { Workbook } from "./model";
import { precedentsIn, type SheetRange } from "./precedents";
import { reasonToLeave } from "./reasonToLeave";
import type { LeftAlone } from "./recalculation";

/** The grid's engine takes seconds for more, so that an audit would be waited for. */
export const MOST_FORMULAS = 10_000;

export interface Feeding {
  readonly calculated: FormulaCell[];
  readonly leftAlone: LeftAlone[];
  /** The calculated cells and all blocks that they read. */
  readonly read: readonly SheetRange[];
  readonly isComplete: boolean;
}

export const placeKey = (sheet: number, row: number, column: number): string =>
  `${sheet}:${row}:${column}`;

const reads = ({ sheet, range }: SheetRange, cell: FormulaCell): boolean =>
  sheet === cell.sheet &&
  range.top <= cell.row &&
  cell.row <= range.bottom &&
  range.left <= cell.column &&
  cell.column <= range.right;

/** Keys of the cells that need their own answer. */
const circularKeys = (workbook: Workbook): ReadonlySet<string> =>
  new Set(
    circularCells(workbook)
      .flat()
      .map(({ sheet, row, column }) => placeKey(sheet, row, column)),
  );

/** The formulas in the given blocks and all that feed them, nearest first, at most 10,000. */
export function feeding(
  workbook: Workbook,
  blocks: readonly SheetRange[],
  known: ReadonlySet<string>,
): Feeding {
  const [precedentsOf, takeFormulas] = [precedentsIn(workbook), indexFormulas(workbook)];
  const circular = circularKeys(workbook);
  const seen = new Set<string>();
  const seenBlocks = new Set<string>();
  const read = new Map<string, SheetRange>();
  const queue = [...blocks];
  const [calculated, leftAlone]: [FormulaCell[], LeftAlone[]] = [[], []];
  let isComplete = true;
  const take = (cell: FormulaCell): void => {
    let reason = reasonToLeave(cell, workbook, known);
    const precedents = reason === null ? precedentsOf(cell.sheet, cell.formula) : [];
    if (precedents.some((block) => reads(block, cell))) reason = "It reads its own cell.";
    else if (circular.has(placeKey(cell.sheet, cell.row, cell.column)))
      reason ??= "It needs its own answer, through other cells.";
    if (reason !== null) leftAlone.push({ cell, reason });
    else {
      calculated.push(cell);
      queue.push(...precedents);
      for (const block of precedents) read.set(JSON.stringify(block), block);
    }
  };
  for (let next = 0; next < queue.length; next += 1) {
    const block = queue[next];
    const blockKey = JSON.stringify(block);
    if (block === undefined || seenBlocks.has(blockKey)) continue;
    seenBlocks.add(blockKey);
    if (!isComplete) continue;
    for (const cell of takeFormulas(block)) {
      const key = placeKey(cell.sheet, cell.row, cell.column);
      if (seen.has(key)) continue;
      seen.add(key);
      isComplete = calculated.length < MOST_FORMULAS;
      if (!isComplete) break;
      take(cell);
    }
  }
  const own = calculated.map(({ sheet, row, column }) => ({
    sheet,
    range: { top: row, left: column, bottom: row, right: column },
  }));
  return { calculated, leftAlone, read: [...own, ...read.values()], isComplete };
}
