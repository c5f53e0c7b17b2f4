import { parseCellName } from "../address";
import type { WorkbookSheet } from "../model";

const CELL = String.raw`\$?[A-Z]{1,3}\$?\d{1,7}`;
const CHAIN = String.raw`${CELL}(?:\s*\+\s*${CELL})+`;

/** Cells added one by one: all of a formula, all that stands in brackets, or one thing a function is given. */
const ADDITION = new RegExp(
  String.raw`(?<![\p{L}\p{N}_.])\(\s*(${CHAIN})\s*\)|(?<=^\s*\+?|[(,]\s*)(${CHAIN})(?=\s*(?:[,)]|$))`,
  "gu",
);

interface Term {
  readonly text: string;
  readonly row: number;
  readonly column: number;
}

/** Whether a formula can hold an addition at all. */
export const mayAdd = (formula: string): boolean => formula.includes("+");

function termsOf(chain: string): Term[] {
  return chain.split("+").flatMap((part) => {
    const text = part.trim();
    const place = parseCellName(text.replaceAll("$", ""));
    return place === null ? [] : [{ text, ...place }];
  });
}

const dollarsOf = ({ text }: Term): string =>
  text.replaceAll(/[^$\d]+|\d+/g, (at) => (/\d/.test(at) ? "1" : "A"));

/** Whether terms go on cell by cell, down or across, all held fast in the same way. */
function areOneRun(terms: readonly Term[]): boolean {
  const [first, second] = terms;
  if (first === undefined || second === undefined) return false;
  const [down, across] = [second.row - first.row, second.column - first.column];
  return (
    ((down === 1 && across === 0) || (down === 0 && across === 1)) &&
    terms.every(
      (term, at) =>
        term.row === first.row + at * down &&
        term.column === first.column + at * across &&
        dollarsOf(term) === dollarsOf(first),
    )
  );
}

/** Whether a sum takes a cell as an addition does: it skips numbers that are text. */
function isCounted({ cellAt }: WorkbookSheet, { row, column }: Term): boolean {
  const value = cellAt(row, column)?.value ?? null;
  return typeof value === "number" || value === null;
}

/** A formula of a sheet with B3+B4+B5 read as SUM(B3:B5), wherever the two say the same. */
export function additionsAsSums(sheet: WorkbookSheet, formula: string): string {
  if (!mayAdd(formula) || formula.includes('"')) return formula;
  return formula.replace(ADDITION, (written: string, inBrackets?: string, alone?: string) => {
    const terms = termsOf(inBrackets ?? alone ?? "");
    const [first, last] = [terms[0], terms.at(-1)];
    if (first === undefined || last === undefined || !areOneRun(terms)) return written;
    return terms.every((term) => isCounted(sheet, term))
      ? `SUM(${first.text}:${last.text})`
      : written;
  });
}
