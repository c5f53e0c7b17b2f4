import type { WorkbookSheet } from "../../workbook/model";
import { headerRole } from "../recipes/headings/headerRole";
import type { Place } from "../recipes/recipeBlock";
import { countsThings } from "./inputLabel";
import type { LabelledLine } from "./typedLinesAbove";

const saysOther = (label: string): boolean => headerRole(label) !== null || countsThings(label);

/**
 * Whether a line is written as another number that it may be added up with, and is neither a count nor an answer, unless
 * one of those is named like that, too.
 */
export function isAlike(
  sheet: WorkbookSheet,
  { place, label }: LabelledLine,
  like: Place,
  others: readonly LabelledLine[] = [],
): boolean {
  const formatOf = ({ row, column }: Place) => sheet.cellAt(row, column)?.format;
  const isOther = saysOther(label) && !others.some((one) => saysOther(one.label));
  return !isOther && formatOf(place) === formatOf(like);
}
