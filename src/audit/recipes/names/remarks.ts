import type { WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";
import type { RecipeBlock } from "../recipeBlock";
import type { Segment } from "../segments";

const REMARKS = /allerg|\b(notes?|comments?|remarks?|cautions?)\b|bemerkung|hinweis/i;

/** Whether a column is headed as what is said of the lines of a list, which may happen to be known names: "milk". */
export const isOfRemarks = (sheet: WorkbookSheet, { headerRow, column }: Segment): boolean =>
  headerRow !== null && REMARKS.test(textAt(sheet, headerRow, column));

/** Whether a list without a header of its own stands, blank rows between, in a column that is headed so. */
export const isBelowRemarks = (
  sheet: WorkbookSheet,
  { headerRow, column }: Segment,
  [top = -1]: readonly number[],
): boolean => headerRow === null && REMARKS.test(textAt(sheet, top, column));

/** Whether a list stands beside the same amounts as another: remarks without a heading. */
export const isSaidOf = (other: RecipeBlock, block: RecipeBlock): boolean =>
  block.range.top <= other.range.bottom &&
  other.range.top <= block.range.bottom &&
  block.recipes.some(({ line }) => other.recipes.some((one) => one.line === line));
