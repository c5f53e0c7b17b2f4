import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { rangeLines } from "../recipes/corrections/rangeLines";
import type { Place } from "../recipes/recipeBlock";
import type { RecipeInBlock } from "./recipeInBlock";
import { recipeReadBy } from "./recipeReadBy";

/** So far above a place and below it, across blank rows. */
const REACH = 12;

/** The one recipe that all formulas near a place in its column read: it is about that, too, though blank rows part them. */
export function recipeOfColumn(
  workbook: Workbook,
  recipes: readonly RecipeInBlock[],
  sheet: WorkbookSheet,
  { row, column }: Place,
): RecipeInBlock | null {
  const rows = rangeLines(Math.max(0, row - REACH), row + REACH);
  const formulas = rows.flatMap((at) => sheet.cellAt(at, column)?.formula ?? []);
  return recipeReadBy(workbook, recipes, sheet, formulas)?.recipe ?? null;
}
