import { parseCellName } from "../../workbook/address";

const CELL =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'!|(?<![\p{L}\p{N}_.$])\$?[A-Z]{1,3}\$?\d{1,7}(?![\p{L}\p{N}_.(!])/giu;

const isCell = (token: string): boolean => !/["']/.test(token);

interface Taken {
  readonly frame: string;
  readonly cells: readonly string[];
}

/** A formula's text with its cells taken out, and the cells. */
function takenApart(formula: string): Taken {
  const cells: string[] = [];
  const frame = formula.replace(CELL, (token) => {
    if (!isCell(token)) return token;
    cells.push(token.toUpperCase());
    return "·";
  });
  return { frame: frame.replace(/\s+/g, "").toUpperCase(), cells };
}

/** What of a cell's name is fixed: "$C$", "C$", "$C" or "C", whichever column it is. */
const fixed = (cell: string): string => cell.replace(/[A-Z]+/g, "C").replace(/\d+/g, "");

/** How two formulas for the same cell differ. */
export type Difference =
  /** Only in what is fixed by $; `sameCells` when they read the same cells for now. */
  { readonly kind: "fixing"; readonly sameCells: boolean } | { readonly kind: "other" };

/** Compares a formula with the one its neighbours would have in its place. */
export function comparedReferences(formula: string, expected: string): Difference {
  const [own, theirs] = [takenApart(formula), takenApart(expected)];
  if (own.frame !== theirs.frame || own.cells.length !== theirs.cells.length)
    return { kind: "other" };
  const changed = own.cells.flatMap((cell, at) => {
    const other = theirs.cells[at] ?? "";
    return cell === other ? [] : [[cell, other] as const];
  });
  const fixing = changed.every(([cell, other]) => fixed(cell) !== fixed(other));
  if (changed.length === 0 || !fixing) return { kind: "other" };
  const sameCells = changed.every(([cell, other]) => {
    const [a, b] = [parseCellName(cell), parseCellName(other)];
    return a !== null && a.row === b?.row && a.column === b.column;
  });
  return { kind: "fixing", sameCells };
}
