import type { WorkbookSheet } from "../../workbook/model";
import type { Place } from "../recipes/recipeBlock";
import type { Summand, Totalled } from "./totalledLines";

/** A total that need not be a recipe's, with what it should count, in the sheet's order. */
export function totalElsewhere(
  sheet: WorkbookSheet,
  { row, column }: Place,
  stored: number,
  summands: readonly Summand[],
): Totalled {
  const formula = sheet.cellAt(row, column)?.formula;
  return {
    ...{ sheet, place: { row, column }, stored, formula, summands, recipe: null, unit: "" },
    ...{ textSum: 0, byFormula: formula !== undefined, mayHoldMore: false, otherTotals: [] },
  };
}
