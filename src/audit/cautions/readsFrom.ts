import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { rangesRead } from "../formulas/rangesRead";
import { amountPlace, type RecipeBlock } from "../recipes/recipeBlock";

/** Of a long list the first lines tell whether it is linked to another sheet. */
const MOST_LINES = 50;

/** Whether a list takes its names or its amounts from another sheet. */
export function readsFrom(workbook: Workbook, block: RecipeBlock, other: WorkbookSheet): boolean {
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
