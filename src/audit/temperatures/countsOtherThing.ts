import type { WorkbookSheet } from "../../workbook/model";
import { isHeadedAsCount } from "../amounts/isHeadedAsCount";
import { unitFromFormat } from "../recipes/amounts/unit";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";

/** "% of its water solid in the freezer", "g in the freezer". */
const OF_OTHER_UNIT = /^\s*(%|per ?cent|prozent|k?g(?!\p{L}))/iu;
/** Functions of ours that give anything but a temperature. */
const GIVES_OTHER =
  /RIME\.(?!(FREEZINGPOINT|ICETEMPERATURE|BOILINGPOINT|GLASSTRANSITION|FREEZINGCURVE|TARGET)\b)/i;

/** Whether a number beside a freezer's name is none of its degrees: told or shown in per cent or grams, worked out as something else, or a count of what is in it. */
export const countsOtherThing = (
  sheet: WorkbookSheet,
  place: Place,
  labelColumn: number,
): boolean => {
  const cell = sheet.cellAt(place.row, place.column);
  return (
    unitFromFormat(cell?.format) !== null ||
    GIVES_OTHER.test(cell?.formula ?? "") ||
    OF_OTHER_UNIT.test(textAt(sheet, place.row, labelColumn)) ||
    isHeadedAsCount(sheet, place, labelColumn)
  );
};
