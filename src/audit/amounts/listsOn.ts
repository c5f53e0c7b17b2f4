import type { CellRange, WorkbookSheet } from "../../workbook/model";
import type { RecipeBlock } from "../recipes/recipeBlock";

/** Where the recipes of a sheet stand, with the column of costs right of each. */
export const listsOn = (blocks: readonly RecipeBlock[], sheet: WorkbookSheet): CellRange[] =>
  blocks
    .filter((block) => block.sheet === sheet)
    .map(({ range }) => ({ ...range, right: range.right + 1 }));
