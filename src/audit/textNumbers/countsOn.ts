import type { WorkbookSheet } from "../../workbook/model";
import { isBlank, textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";

const WHOLE = /^\d{1,3}$/;
/** The next number stands at most so many rows on: a question may go on, or leave room for its answer. */
const REACH = 5;
/** So many that follow on each other are no amounts by chance. */
const LEAST = 3;

/** How many texts above or below a place count on from it, as far as that tells something. */
function follow(sheet: WorkbookSheet, { row, column }: Place, step: 1 | -1, most: number): number {
  const rows = Array.from({ length: REACH }, (_, at) => row + step * (1 + at));
  const next = rows.find((at) => !isBlank(sheet, at, column));
  if (next === undefined || most === 0) return 0;
  const text = textAt(sheet, next, column);
  const isNext = WHOLE.test(text) && Number(text) === Number(textAt(sheet, row, column)) + step;
  return isNext ? 1 + follow(sheet, { row: next, column }, step, most - 1) : 0;
}

/** Whether texts below each other count on by ones, as questions and lines are numbered. */
export const countsOn = (sheet: WorkbookSheet, place: Place): boolean =>
  WHOLE.test(textAt(sheet, place.row, place.column)) &&
  1 + follow(sheet, place, -1, LEAST - 1) + follow(sheet, place, 1, LEAST - 1) >= LEAST;
