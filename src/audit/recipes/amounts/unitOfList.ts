import type { WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";
import type { RecipeName } from "../recipeBlock";
import type { Segment } from "../segments";
import { ratioUnit } from "./ratioUnit";
import { unitFromWord, type AmountUnit } from "./unit";
import { unitIn, unitInTitle } from "./unitInTitle";
import { unitOfHeading } from "./unitOfHeading";

/** The rows from a header down to the first name: below titles another may head the names. */
const rowsBetween = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(1, to - from) }, (_, at) => from + at);

/** "grams for one batch", "per cent by weight" over the titles of recipes, and no number that it says something of. */
function unitOver(sheet: WorkbookSheet, header: number, amounts: number): AmountUnit | null {
  const text = textAt(sheet, header - 1, amounts);
  const [first = ""] = text.toLowerCase().split(" ");
  const isOver = textAt(sheet, header, amounts) !== "" && !/\d/.test(text);
  return isOver ? (unitFromWord(first) ?? unitIn(text)) : null;
}

/** A unit that all names carry, or their header ("Ingredient (g)"), or their total ("Total, kg"). */
export function unitOfList(
  sheet: WorkbookSheet,
  { headerRow: header, column, isContinued, isAgain }: Segment,
  names: readonly RecipeName[],
  totals: readonly number[],
  amounts: number,
): AmountUnit | null {
  const first = names[0]?.unit;
  if (first !== undefined && names.every(({ unit }) => unit === first)) return first;
  // What says the same again says its own unit, if any, right above.
  const headerRow = isAgain === true ? null : header;
  const to = isContinued === true ? headerRow : names[0]?.row;
  const headers = headerRow === null ? [] : rowsBetween(headerRow, to ?? headerRow);
  const labels = [...headers, ...totals].map((row) => textAt(sheet, row, column));
  const units = labels.map((label) => ratioUnit(label) ?? unitOfHeading(label) ?? unitIn(label));
  const labelled = units.find((unit) => typeof unit === "string");
  const top = headerRow ?? names[0]?.row ?? 0;
  const titled = labelled ?? unitInTitle(sheet, top, Math.max(0, column - 1), column + 1);
  return titled ?? unitOver(sheet, top, amounts);
}
