import type { WorkbookSheet } from "../../workbook/model";
import { contains, referencesOf } from "../../workbook/references";
import { isLineOfSum } from "../amounts/isLineOfSum";
import type { AuditContext } from "../context";
import { filledAnswerRows } from "./filledAnswerRows";
import { filledByName } from "./filledByName";
import { filledLine, filledLines, patternAt, type FilledLine } from "./filledLines";
import { lineByName } from "./lineByName";
import { lineReadingOn } from "./lineReadingOn";
import { filledSumsBelow } from "./filledSumsBelow";
import { filledSolutions } from "./filledSolutions";
import { readsFreeElsewhere } from "./readsFreeElsewhere";
import { goesOnFrom } from "./goesOnFrom";
import { sumsUp } from "./sumsUp";
import { runsOf, type Run } from "./runsOf";
import { movedAcross } from "./movedAcross";
import { isBlank, textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { isOneRow, type Place, type RecipeBlock } from "../recipes/recipeBlock";

/** Recipes' own columns are looked at with their ingredients and totals in mind. */
const touches = ({ column, top, bottom }: Run, { range }: RecipeBlock): boolean =>
  column >= range.left && column <= range.right + 1 && top <= range.bottom && bottom >= range.top;

/** Whether a formula goes on with those left of it: where a row of sums crosses a column of sums, either is right. */
function goesOnWithItsRow(sheet: WorkbookSheet, place: Place, expected: string): boolean {
  const { row, column } = place;
  const isOfRow = goesOnFrom(sheet, place, { row, column: column - 1 });
  const isOfRowBefore = goesOnFrom(sheet, place, { row, column: column - 2 });
  // A row of differences crosses a column of means.
  if (sumsUp(expected) && staysInRow(expected, row) && isOfRow && isOfRowBefore) return true;
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  return sumsUp(formula) && (isOfRow || isOfRowBefore);
}

/** Whether a formula adds up cells of its own row and no others. */
const staysInRow = (formula: string, row: number): boolean =>
  referencesOf(formula).every(
    ({ sheet, range: { top, bottom } }) => sheet === null && top === row && bottom === row,
  );

/** Whether a row sums up those above it, and so has a formula of its own by right. */
function isSummary(sheet: WorkbookSheet, { row, column }: Place, pattern: string): boolean {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  if (sumsUp(formula) && !sumsUp(pattern) && !staysInRow(formula, row)) return true;
  for (let at = column - 1; at >= Math.max(0, column - 8); at -= 1) {
    // Beyond a free column stands another table.
    if ([row - 1, row, row + 1].every((each) => isBlank(sheet, each, at))) return false;
    const role = headerRole(textAt(sheet, row, at));
    if (role === "total") return !isLineOfSum(sheet, { row, column });
  }
  return false;
}

/** Whether the last cell of a run sums up the others, which may be sums of their rows: it is none of those that were filled. */
function endsInSum(sheet: WorkbookSheet, { column, top, bottom, step }: Run): boolean {
  const formulaAt = (row: number) => sheet.cellAt(row, column)?.formula ?? "";
  const isSum = (row: number) => sumsUp(formulaAt(row));
  const before = bottom - (step ?? 1);
  const sumsAbove = (row: number) =>
    isSum(row) &&
    referencesOf(formulaAt(row)).some(({ range }) => contains(range, row - (step ?? 1), column));
  return isSum(bottom) && (!isSum(top) || (sumsAbove(bottom) && !sumsAbove(before)));
}

const isOwnFormula = (sheet: WorkbookSheet, line: FilledLine, place: Place): boolean =>
  isSummary(sheet, place, line.pattern) || goesOnWithItsRow(sheet, place, patternAt(line, place));

function lineOf({ workbook }: AuditContext, sheet: WorkbookSheet, run: Run): FilledLine | null {
  const { column, top, bottom, step } = run;
  const every = step ?? 1;
  const places = {
    length: (bottom - top) / every + (endsInSum(sheet, run) ? 0 : 1),
    placeAt: (at: number) => ({ row: top + at * every, column }),
  };
  const line =
    filledLine(sheet, places) ??
    (every === 1 ? filledLine(sheet, { ...places, move: movedAcross(top, bottom) }) : null) ??
    lineByName(workbook, sheet, places) ??
    lineReadingOn(sheet, places);
  if (line === null) return null;
  const isStranger = (at: Place) =>
    !isOwnFormula(sheet, line, at) && !readsFreeElsewhere(workbook, patternAt(line, at));
  return { ...line, strangers: line.strangers.filter(isStranger) };
}

const known = new WeakMap<readonly RecipeBlock[], readonly FilledLine[]>();

/**
 * The lines of a workbook that are filled with one formula: those of its recipes, the answers below recipes in
 * columns, then all other columns.
 */
export function filledColumns(context: AuditContext): readonly FilledLine[] {
  const { workbook, blocks } = context;
  const before = known.get(blocks);
  if (before !== undefined) return before;
  // One solution's row tells nothing of its columns, nor do the labels of a worked example.
  const own = blocks.filter((block) => block.answers === undefined && !isOneRow(block));
  const others = workbook.sheets.flatMap((sheet) => {
    const here = own.filter((block) => block.sheet === sheet);
    return runsOf(sheet)
      .filter((run) => !here.some((block) => touches(run, block)))
      .flatMap((run) => lineOf(context, sheet, run) ?? []);
  });
  const answers = own.flatMap((block) => filledAnswerRows(block, blocks));
  const sums = own.flatMap(filledSumsBelow);
  const solutions = filledSolutions(blocks);
  const named = own.flatMap((block) => filledByName(workbook, block));
  const found = [
    ...own.flatMap(filledLines),
    ...named,
    ...answers,
    ...sums,
    ...solutions,
    ...others,
  ];
  known.set(blocks, found);
  return found;
}
