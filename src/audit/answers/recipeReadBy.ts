import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { rangesRead, type RangeRead } from "../formulas/rangesRead";
import { readsAmounts, readsTotal, type RecipeInBlock } from "./recipeInBlock";

interface Readers {
  readonly recipe: RecipeInBlock;
  /** How many formulas read it. */
  readonly formulas: number;
}

/** The one recipe whose amounts or total some formulas of a sheet read; null where they read none or several. */
export function recipeReadBy(
  workbook: Workbook,
  recipes: readonly RecipeInBlock[],
  sheet: WorkbookSheet,
  formulas: readonly string[],
): Readers | null {
  const read = formulas.map((formula) => rangesRead(workbook)(sheet, formula));
  const isRead = (each: RecipeInBlock, ranges: readonly RangeRead[]) =>
    readsAmounts(ranges, each) || readsTotal(ranges, each);
  const all = read.flat();
  const [recipe, ...more] = recipes.filter((each) => isRead(each, all));
  if (recipe === undefined || more.length > 0) return null;
  return { recipe, formulas: read.filter((ranges) => isRead(recipe, ranges)).length };
}
