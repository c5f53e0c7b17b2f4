import type { Cell, Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import type { PaneContext } from "../view";

const FEW = 6;

function cellText(cell: Cell, { words, numbers }: PaneContext): string {
  if (cell === null) return words.why.blank;
  if (isProblem(cell)) return words.said(cell.message);
  return typeof cell === "number" ? numbers.plain(cell) : String(cell);
}

/** A value in one line: a cell as it is, a small block by its contents, a large one by its size. */
export function valueText(value: Cell | Matrix, context: PaneContext): string {
  if (!Array.isArray(value)) return cellText(value as Cell, context);
  const cells = (value as Matrix).flat();
  return cells.length > FEW
    ? context.words.why.cells(cells.length)
    : cells.map((cell) => cellText(cell, context)).join(" · ");
}
