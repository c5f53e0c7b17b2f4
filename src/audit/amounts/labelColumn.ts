import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";

/** Labels stand at most so far left of their numbers. */
const REACH = 4;

/** The column left of a sum in which its label stands. */
export const labelColumn = (sheet: WorkbookSheet, { row, column }: Place): number | undefined =>
  Array.from({ length: REACH }, (_, step) => column - 1 - step).find(
    (at) => textAt(sheet, row, at) !== "",
  );
