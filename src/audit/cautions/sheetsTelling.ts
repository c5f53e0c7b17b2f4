import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { rangesRead } from "../formulas/rangesRead";
import { amountPlace, type RecipeBlock } from "../recipes/recipeBlock";

/** Of a long list the first lines tell whether it is linked to another sheet. */
const MOST_LINES = 50;

/** Whether a list takes its names or its amounts from another sheet. */
function readsFrom(workbook: Workbook, block: RecipeBlock, other: WorkbookSheet): boolean {
  const { sheet, names, recipes } = block;
  return names
    .slice(0, MOST_LINES)
    .flatMap((name) => [
      name,
      ...recipes.slice(0, MOST_LINES).map((recipe) => amountPlace(block, recipe, name)),
    ])
    .some(({ row, column }) => {
      const formula = sheet.cellAt(row, column)?.formula;
      return (
        formula !== undefined &&
        rangesRead(workbook)(sheet, formula).some((read) => read.sheet === other)
      );
    });
}

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
