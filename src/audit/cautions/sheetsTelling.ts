import type { Workbook, WorkbookSheet } from "../../workbook/model";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { readsFrom } from "./readsFrom";

/**
 * The sheets on which it may be told what the recipes of a sheet carry: that sheet, those without a recipe that
 * carries it, as labels and boards, and those that are linked to it. What stands with another recipe that carries it
 * is told of that one.
 */
export function sheetsTelling(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  home: WorkbookSheet,
  carries: (block: RecipeBlock) => boolean,
): readonly WorkbookSheet[] {
  const on = (sheet: WorkbookSheet) => blocks.filter((block) => block.sheet === sheet);
  const isLinked = (sheet: WorkbookSheet) =>
    on(home).some((block) => readsFrom(workbook, block, sheet)) ||
    on(sheet).some((block) => readsFrom(workbook, block, home));
  return workbook.sheets.filter(
    (sheet) => sheet === home || !on(sheet).some(carries) || isLinked(sheet),
  );
}
