import type { Workbook } from "../../workbook/model";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { filledLines, linesOf, type FilledLine, type Line } from "./filledLines";
import { lineByName } from "./lineByName";

const columnOf = ({ placeAt }: Line): number => placeAt(0).column;

/** The columns of a recipe whose formulas choose what they read by its name: prices of a list for several recipes. */
export function filledByName(workbook: Workbook, block: RecipeBlock): readonly FilledLine[] {
  if (block.layout !== "down") return [];
  const filled = new Set(filledLines(block).map(columnOf));
  const down = linesOf(block).filter(
    ({ length, placeAt }) => length > 1 && placeAt(1).column === placeAt(0).column,
  );
  return down.flatMap((line) =>
    filled.has(columnOf(line)) ? [] : (lineByName(workbook, block.sheet, line) ?? []),
  );
}
