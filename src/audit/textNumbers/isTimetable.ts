import type { WorkbookSheet } from "../../workbook/model";
import { saysDegrees } from "../amounts/saysDegrees";
import { textAt } from "../recipes/cells";
import { headerRole, type Role } from "../recipes/headings/headerRole";
import { plainWords } from "../recipes/headings/plainWords";
import type { Place } from "../recipes/recipeBlock";
import { unitFromHeader } from "../recipes/amounts/unit";

/** "1.45", "14.30": an hour and its minutes, which people write by fives. */
const CLOCK = /^([01]?\d|2[0-3])\.([0-5][05])$/;
const FAR = 200;
const HALF_DAY = 720;

/** What a column of readings may be headed: "Freezer read at". A price or a molality is none. */
const MAY_HEAD_TIMES = new Set<Role | null>(["temperature", "measured", "other", null]);

function minutesAt(sheet: WorkbookSheet, row: number, column: number): number | null {
  const [, hours, minutes] = CLOCK.exec(textAt(sheet, row, column)) ?? [];
  return hours === undefined ? null : (60 * Number(hours) + Number(minutes)) % HALF_DAY;
}

/** The minutes of the times that stand below each other around a cell; null where something else does. */
function timesAround(sheet: WorkbookSheet, { row, column }: Place, label: string): number[] | null {
  let top = row;
  while (top > Math.max(0, row - FAR) && minutesAt(sheet, top - 1, column) !== null) top -= 1;
  const times: number[] = [];
  for (let at = top; at < top + FAR && textAt(sheet, at, column) !== ""; at += 1) {
    const minutes = minutesAt(sheet, at, column);
    if (minutes === null) return null;
    times.push(minutes);
  }
  return textAt(sheet, top - 1, column) === label ? times : null;
}

/**
 * Whether texts under a heading without a unit are times of a day: one after the other, over noon or midnight once at
 * most. No list of temperatures rises like that.
 */
export function isTimetable(sheet: WorkbookSheet, place: Place, label: string): boolean {
  const hasUnit = saysDegrees(label) || unitFromHeader(plainWords(label)) !== null;
  if (hasUnit || !MAY_HEAD_TIMES.has(headerRole(label))) return false;
  const times = timesAround(sheet, place, label) ?? [];
  const backwards = times.filter((time, at) => at > 0 && time <= (times[at - 1] ?? 0));
  return times.length > 1 && backwards.length <= 1 && times.length > 2 * backwards.length;
}
