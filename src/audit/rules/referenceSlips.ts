import { cellName, rangeName } from "../../workbook/address";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { cellEdit, formulaEdit } from "../cellEdit";
import { comparedReferences } from "../formulas/comparedReferences";
import { patternAt, type FilledLine } from "../formulas/filledLines";
import { filledColumns } from "../formulas/filledRuns";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { Place } from "../recipes/recipeBlock";
import { referencesOf } from "../../workbook/references";
import { summaryStrangers } from "../formulas/summaryStrangers";
import type { Rule } from "../rule";
import { toldOnce } from "../toldOnce";

const identity = { id: "reference-slips", severity: "warning" } as const;
const FIRST = 4;

/** Whether most of the first cells of a line are written with names or columns of a table. */
function isByName({ sheet, length, placeAt }: FilledLine): boolean {
  const first = Array.from({ length: Math.min(length, FIRST) }, (_, at) => placeAt(at));
  const named = first.filter(({ row, column }) => sheet.cellAt(row, column)?.written !== undefined);
  return 2 * named.length >= first.length;
}

/** A formula that differs from the one expected only in what is fixed. */
function slipAt(sheet: WorkbookSheet, place: Place, formula: string, expected: string): Finding[] {
  const difference = comparedReferences(formula, expected);
  if (difference.kind !== "fixing") return [];
  const wanted = `=${expected}`;
  const now = difference.sameCells ? "; it reads the same cells for now" : "";
  return [
    findingAt(identity, sheet, place, {
      message: `${cellName(place.row, place.column)} has =${formula.slice(0, 80)} where the cells around it have ${wanted.slice(0, 81)}: a $ is missing or too much${now}.`,
      effect: null,
      fix: `Enter ${wanted}.`,
      edits: cellEdit(sheet, place, wanted),
    }),
  ];
}

/** One cell whose reference is fixed where those around it move, or the other way round. */
function strangersIn(line: FilledLine): Finding[] {
  const { sheet, strangers } = line;
  return strangers.flatMap((place) => {
    const cell = sheet.cellAt(place.row, place.column);
    // A name or a table's column says itself what it reads; there is no $ to slip.
    return cell?.formula === undefined || cell.written !== undefined || isByName(line)
      ? []
      : slipAt(sheet, place, cell.formula, patternAt(line, place));
  });
}

interface Drift {
  readonly anchor: Place;
  /** The rows in which the reference has left its cell. */
  readonly wrong: CellRange;
}

/**
 * A whole column filled down without a $: its first row reads a total or a single number outside the list, the
 * next rows read what stands below that, which is nothing.
 */
function driftIn({ sheet, length, placeAt, pattern }: FilledLine): Drift | null {
  const [first, second, last] = [placeAt(0), placeAt(1), placeAt(length - 1)];
  if (first.column !== second.column) return null;
  for (const { sheet: other, range } of referencesOf(pattern)) {
    const single = range.top === range.bottom && range.left === range.right;
    const outside = range.top > last.row || range.top < first.row;
    if (other !== null || !single || !outside || !isRelative(pattern, range)) continue;
    const number = (row: number) => typeof sheet.cellAt(row, range.left)?.value === "number";
    const steps = Array.from({ length: last.row - first.row }, (_, at) => at + 1);
    if (number(range.top) && !steps.some((step) => number(range.top + step))) {
      return {
        anchor: { row: range.top, column: range.left },
        wrong: { top: second.row, bottom: last.row, left: first.column, right: first.column },
      };
    }
  }
  return null;
}

/** Whether the row of a cell is not fixed in a formula. */
const isRelative = (formula: string, { top, left }: CellRange): boolean =>
  new RegExp(
    `(?<![A-Z0-9$!:])\\$?${cellName(top, left).replace(/\d+/, "")}${top + 1}(?![0-9:])`,
    "i",
  ).test(formula);

const placesOf = ({ length, placeAt }: FilledLine): Place[] =>
  Array.from({ length }, (_, at) => placeAt(at));

function driftFinding(line: FilledLine): Finding[] {
  const drift = line.expectedAt === undefined ? driftIn(line) : null;
  if (drift === null) return [];
  const { anchor, wrong } = drift;
  const cell = cellName(anchor.row, anchor.column);
  const fixed = cell.replace(/([A-Z]+)(\d+)/, "$1$$$2");
  const first = line.placeAt(0);
  const mended = line.pattern.replace(new RegExp(`(?<![A-Z0-9$])${cell}(?![0-9])`, "gi"), fixed);
  const repaired = { ...line, pattern: mended };
  return [
    findingAt(identity, line.sheet, wrong, {
      message: `${rangeName(wrong)}: the formula of ${cellName(first.row, first.column)} reads ${cell}, and filled down without a $ its copies read the blank cells below it.`,
      effect: null,
      fix: `Write ${fixed} in ${cellName(first.row, first.column)} and fill it down again.`,
      edits: placesOf(line).flatMap((place) =>
        formulaEdit(line.sheet, place, patternAt(repaired, place)),
      ),
    }),
  ];
}

export const referenceSlips: Rule = {
  ...identity,
  title: "A reference is fixed where those around it move, or the other way round",
  find: (context) =>
    toldOnce([
      ...filledColumns(context).flatMap((line) => [...strangersIn(line), ...driftFinding(line)]),
      ...summaryStrangers(context.workbook)
        .filter(({ sheet, place }) => sheet.cellAt(place.row, place.column)?.written === undefined)
        .flatMap(({ sheet, place, formula, expected }) => slipAt(sheet, place, formula, expected)),
    ]),
};
