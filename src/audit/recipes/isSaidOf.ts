import { textAt } from "./cells";
import { headerRole } from "./headerRole";
import type { RecipeBlock } from "./recipeBlock";

/** Whether a list stands in another's rows, beside the same amounts or headed as what is no name: allergens, remarks. */
export function isSaidOf(other: RecipeBlock, block: RecipeBlock): boolean {
  const { sheet, headerRow, range, names, recipes } = block;
  if (range.top > other.range.bottom || other.range.top > range.bottom) return false;
  const heading = textAt(sheet, headerRow ?? -1, names[0]?.column ?? 0);
  const isRemarks = headerRow === other.headerRow && headerRole(heading) === "other";
  return isRemarks || recipes.some(({ line }) => other.recipes.some((one) => one.line === line));
}
