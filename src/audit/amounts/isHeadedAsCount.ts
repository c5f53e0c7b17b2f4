import type { WorkbookSheet } from "../../workbook/model";
import { isBlank, textAt } from "../recipes/cells";
import { headerRole, type Role } from "../recipes/headings/headerRole";
import type { Place } from "../recipes/recipeBlock";
import { saysDegrees } from "./saysDegrees";

/** Longer lists of things to buy are not looked through. */
const MOST_ROWS = 60;

const OF_THINGS = new Set<Role | null>(["amount", "price"]);
const HOW_MANY =
  /\b(how many|number of|count|qty|pieces|pcs|units|rolls|packs|packets|wie ?viele?|stk)\b|anzahl|stück/i;

/**
 * Whether the heading of a table's column says that things are counted, weighed or paid: "To buy | How many", below it
 * "Freezer tape | 2". A label in degrees is that of its own number.
 */
export function isHeadedAsCount(
  sheet: WorkbookSheet,
  { row, column }: Place,
  labels: number,
): boolean {
  if (saysDegrees(textAt(sheet, row, labels))) return false;
  for (let at = row - 1; at >= Math.max(0, row - MOST_ROWS); at -= 1) {
    if (isBlank(sheet, at, labels) || isBlank(sheet, at, column)) return false;
    const heading = textAt(sheet, at, column);
    if (heading !== "") return HOW_MANY.test(heading) || OF_THINGS.has(headerRole(heading));
  }
  return false;
}
