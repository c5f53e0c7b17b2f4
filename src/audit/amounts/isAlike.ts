import type { WorkbookSheet } from "../../workbook/model";
import { headerRole } from "../recipes/headings/headerRole";
import type { Place } from "../recipes/recipeBlock";
import { countsThings } from "./inputLabel";
import type { LabelledLine } from "./typedLinesAbove";

/** Whether a line is written as another number that it may be added up with, and is neither a count nor an answer. */
export function isAlike(
  sheet: WorkbookSheet,
  { place, label }: LabelledLine,
  like: Place,
): boolean {
  const formatOf = ({ row, column }: Place) => sheet.cellAt(row, column)?.format;
  const isOther = headerRole(label) !== null || countsThings(label);
  return !isOther && formatOf(place) === formatOf(like);
}
