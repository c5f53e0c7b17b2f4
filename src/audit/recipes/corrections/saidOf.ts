import { badInput, isProblem } from "../../../foundation/problem";
import type { Result } from "../../../foundation/result";
import { parseRangeName, rangeName } from "../../../workbook/address";
import type { Workbook } from "../../../workbook/model";
import { headingOf } from "./headingOf";
import { readCorrections } from "./readCorrections";
import { CORRECTION_FIELDS, type RecipeCorrection } from "./recipeCorrection";

/**
 * A correction as it is said of a workbook now: checked, without blank parts, and with the words in its first row,
 * by which it is known again later.
 */
export function saidOf(
  { sheets }: Workbook,
  correction: RecipeCorrection,
): Result<RecipeCorrection> {
  const sheet = sheets.find(({ name }) => name.toLowerCase() === correction.sheet.toLowerCase());
  const range = parseRangeName(correction.range);
  if (sheet === undefined)
    return badInput(`There is no sheet "${correction.sheet}": cells are written like Ices!A1:C9.`);
  if (range === null)
    return badInput(`"${correction.range}" is no range: cells are written like Ices!A1:C9.`);
  const checked = readCorrections([correction]);
  if (isProblem(checked)) return checked;
  const whole = {
    ...correction,
    sheet: sheet.name,
    range: rangeName(range),
    heading: headingOf(sheet, range),
  };
  const parts = CORRECTION_FIELDS.flatMap((field) => {
    const text = whole[field]?.trim() ?? "";
    return text === "" ? [] : [[field, text]];
  });
  return Object.fromEntries(parts) as RecipeCorrection;
}
