import { eachFormula } from "./eachFormula";
import { FormulaColumns, type FormulaNode } from "./formulaColumns";
import type { Workbook, WorkbookSheet } from "./model";
import { referencesOf } from "./references";

/** A formula that needs its own answer, directly or through others; the sheet counts from zero. */
export interface CircularPlace {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
}

/** A workbook with more circles than this has been told enough. */
const MOST_CIRCLES = 20;

const MOST_NAMES_DEEP = 8;

/** What a formula reads, the workbook's names put in their place. */
function namesOf(workbook: Workbook): (formula: string, depth?: number) => string {
  const names = new Map(
    workbook.names.map(({ name, refersTo }) => [name.toLowerCase(), refersTo] as const),
  );
  const expand = (formula: string, depth = 0): string =>
    names.size === 0 || depth > MOST_NAMES_DEEP
      ? formula
      : formula.replace(
          /"(?:[^"]|"")*"|'(?:[^']|'')*'!\S*|(?<![\w.!$])[\p{L}_][\p{L}\p{N}_.]*(?![\p{L}\p{N}_.(!])/gu,
          (word) => {
            const refersTo = names.get(word.toLowerCase());
            return refersTo === undefined ? word : `(${expand(refersTo, depth + 1)})`;
          },
        );
  return expand;
}

function columnsOfFormulas(sheet: WorkbookSheet): ReadonlySet<number> {
  const columns = new Set<number>();
  eachFormula(sheet, (_row, column, cell) => {
    if (cell.sharedFormula !== undefined || cell.formula !== undefined) columns.add(column);
  });
  return columns;
}

type Circles = readonly (readonly CircularPlace[])[];

const known = new WeakMap<Workbook, Circles>();

/**
 * The circles among a workbook's formulas, each from the cell it comes back to onwards; at most 20. Told from
 * the references in the formulas and names: a circle through a table's column or INDIRECT is not seen, and
 * one behind an IF that is never taken is. Takes time in proportion to the formulas, not to what they read.
 */
export function circularCells(workbook: Workbook): Circles {
  const circles = known.get(workbook) ?? circlesIn(workbook);
  known.set(workbook, circles);
  return circles;
}

function circlesIn(workbook: Workbook): Circles {
  const sheetByName = new Map(
    workbook.sheets.map(({ name }, index) => [name.toLowerCase(), index]),
  );
  const withNames = namesOf(workbook);
  const filled = workbook.sheets.map(columnsOfFormulas);
  const sheets = workbook.sheets.map(
    (sheet, index) => new FormulaColumns(sheet, index, (formula) => readsFormulas(index, formula)),
  );
  const circles: FormulaNode[][] = [];

  /** Most formulas read typed numbers only: they are in no circle. */
  function readsFormulas(home: number, formula: string): boolean {
    return referencesOf(withNames(formula)).some(({ sheet, range }) => {
      const index = sheet === null ? home : sheetByName.get(sheet.toLowerCase());
      const columns = index === undefined ? undefined : filled[index];
      if (columns === undefined) return false;
      for (const column of columns) {
        if (column >= range.left && column <= range.right) return true;
      }
      return false;
    });
  }

  function* readBy(node: FormulaNode): Generator<FormulaNode, undefined> {
    for (const { sheet, range } of referencesOf(withNames(node.formula))) {
      const index = sheet === null ? node.sheet : sheetByName.get(sheet.toLowerCase());
      const target = index === undefined ? undefined : sheets[index];
      if (target !== undefined) yield* target.unfinishedIn(range);
    }
  }

  function walkFrom(start: FormulaNode): void {
    const path = [{ node: start, reads: readBy(start) }];
    start.state = "open";
    for (let last = path.at(-1); last !== undefined; last = path.at(-1)) {
      const { value: next } = last.reads.next();
      if (next === undefined || circles.length >= MOST_CIRCLES) {
        last.node.state = "done";
        path.pop();
      } else if (next.state === "open") {
        circles.push(
          path.slice(path.findIndex(({ node }) => node === next)).map(({ node }) => node),
        );
      } else {
        next.state = "open";
        path.push({ node: next, reads: readBy(next) });
      }
    }
  }
  for (const node of sheets.flatMap(({ nodes }) => nodes)) {
    if (node.state === "unread" && circles.length < MOST_CIRCLES) walkFrom(node);
  }
  return circles.map((circle) => circle.map(({ sheet, row, column }) => ({ sheet, row, column })));
}
