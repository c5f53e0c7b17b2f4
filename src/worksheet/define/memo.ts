import type { Cell, Matrix } from "../../foundation/cell";
import { isProblem } from "../../foundation/problem";
import type { Given } from "./hostValue";

/** Answers of earlier calls, so that a recalculation that changes nothing costs nothing. */
export interface Memo {
  readonly find: (given: readonly Given[]) => Matrix | undefined;
  readonly keep: (given: readonly Given[], answer: Matrix) => void;
}

const CALLS_KEPT = 16;
const CELLS_KEPT = 200_000;

interface Kept {
  readonly given: readonly Given[];
  readonly answer: Matrix;
  readonly cells: number;
}

const sameCell = (a: Cell, b: Cell): boolean =>
  Object.is(a, b) || (isProblem(a) && isProblem(b) && a.kind === b.kind && a.message === b.message);

function sameRow(a: readonly Cell[], b: readonly Cell[] | undefined): boolean {
  return a.length === b?.length && a.every((cell, at) => sameCell(cell, b[at] ?? null));
}

function sameGiven(a: Given, b: Given): boolean {
  if (a === null || b === null) return a === b;
  return a.length === b.length && a.every((row, at) => sameRow(row, b[at]));
}

const cellsIn = (matrix: Given): number =>
  matrix === null ? 0 : matrix.length * (matrix[0]?.length ?? 0);

/** A memo bounded in calls and in cells; the least recently used answer goes first. */
export function createMemo(): Memo {
  const kept: Kept[] = [];
  return {
    find: (given) => {
      const at = kept.findIndex((one) =>
        given.every((matrix, i) => sameGiven(matrix, one.given[i] ?? null)),
      );
      const found = kept[at];
      if (found !== undefined && at > 0) kept.unshift(...kept.splice(at, 1));
      return found?.answer;
    },
    keep: (given, answer) => {
      const cells = given.reduce((sum, matrix) => sum + cellsIn(matrix), cellsIn(answer));
      if (cells > CELLS_KEPT) return;
      kept.unshift({ given, answer, cells });
      let total = kept.reduce((sum, one) => sum + one.cells, 0);
      while (kept.length > CALLS_KEPT || total > CELLS_KEPT) total -= kept.pop()?.cells ?? 0;
    },
  };
}
