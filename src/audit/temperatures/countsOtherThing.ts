import type { WorkbookSheet } from "../../workbook/model";
import { isHeadedAsCount } from "../amounts/isHeadedAsCount";
import { unitFromFormat } from "../recipes/amounts/unit";
import type { Place } from "../recipes/recipeBlock";

/** Whether a number beside a freezer's name is none of its degrees: shown in per cent or grams, or a count of what is in it. */
export const countsOtherThing = (
  sheet: WorkbookSheet,
  place: Place,
  labelColumn: number,
): boolean =>
  unitFromFormat(sheet.cellAt(place.row, place.column)?.format) !== null ||
  isHeadedAsCount(sheet, place, labelColumn);
