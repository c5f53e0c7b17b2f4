import type { CellRange } from "../../workbook/model";
import { contains, referencesOf } from "../../workbook/references";
import type { AuditContext } from "../context";
import { isBlank } from "../recipes/cells";
import { isLedger } from "../recipes/isLedger";
import type { Place } from "../recipes/recipeBlock";
import { recomputed } from "./recomputed";
import { inOurUnit, isOff } from "./resultDifference";
import type { StatedResult } from "./statedResults";

/** What averages readings stands at most this far below or right of each of them. */
const REACH = 5;
const AVERAGES =
  /^=?\s*(ROUND\s*\(\s*)?((AVERAGE|MEDIAN)\s*\(|(SUM\s*)?\([^()]+\)\s*\/\s*\d+\s*$)/i;

/** What a formula averages on its own sheet; nothing where it does something else. */
function averagedBy({ sheet }: StatedResult, { row, column }: Place): readonly CellRange[] {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  if (!AVERAGES.test(formula)) return [];
  const read = referencesOf(formula);
  return read.every((one) => one.sheet === null) ? read.map(({ range }) => range) : [];
}

/** More than so many cells are no readings of one thing. */
const MOST_READINGS = 60;

/** The cells of a range, none of a long one. */
function placesOf({ top, bottom, left, right }: CellRange): Place[] {
  const [width, height] = [right - left + 1, bottom - top + 1];
  const size = width * height > MOST_READINGS ? 0 : width * height;
  return Array.from({ length: size }, (_, at) => ({
    row: top + Math.floor(at / width),
    column: left + (at % width),
  }));
}

/** Whether some cells are typed answers that say the same of one recipe, two of them at least. */
function sayTheSame(
  { results }: AuditContext,
  { sheet, recipe, role }: StatedResult,
  ranges: readonly CellRange[],
): boolean {
  const filled = ranges.flatMap(placesOf).filter(({ row, column }) => !isBlank(sheet, row, column));
  const same = results.filter(
    (one) =>
      one.recipe === recipe &&
      one.role === role &&
      one.sheet === sheet &&
      sheet.cellAt(one.row, one.column)?.formula === undefined &&
      ranges.some((range) => contains(range, one.row, one.column)),
  );
  return same.length >= 2 && same.length === filled.length;
}

/** Whether a formula says the same of the same recipe, and rightly: what was typed beside it was read off. */
const isWorkedOutBeside = (
  context: AuditContext,
  { recipe, role, row, column, sheet: home }: StatedResult,
): boolean =>
  context.results.some(
    (one) =>
      one.recipe === recipe &&
      one.role === role &&
      !(one.sheet === home && one.row === row && one.column === column) &&
      one.sheet.cellAt(one.row, one.column)?.formula !== undefined &&
      isRight(context, one),
  );

/** Whether an answer is what its recipe gives. */
function isRight(context: AuditContext, result: StatedResult): boolean {
  const ours = recomputed(context, result);
  return ours !== null && !isOff(result.role, inOurUnit(result), ours);
}

/**
 * Whether an answer was read off a thermometer: it is typed beside one that a formula gives, or one of several typed
 * ones for the same recipe that are averaged, or their average. Nobody types what is worked out already.
 */
export function isReading(context: AuditContext, result: StatedResult): boolean {
  const { sheet, row, column, role, block } = result;
  if ((role !== "freezing point" && role !== "depression") || isLedger(block)) return false;
  if (sheet.cellAt(row, column)?.formula !== undefined)
    return sayTheSame(context, result, averagedBy(result, result));
  if (isWorkedOutBeside(context, result)) return true;
  const steps = Array.from({ length: REACH }, (_, at) => at + 1);
  const near = steps.flatMap((step) => [
    { row: row + step, column },
    { row, column: column + step },
  ]);
  return near.some((place) => {
    const ranges = averagedBy(result, place);
    return (
      ranges.some((range) => contains(range, row, column)) && sayTheSame(context, result, ranges)
    );
  });
}
