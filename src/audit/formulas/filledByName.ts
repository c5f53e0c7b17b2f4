import type { Workbook } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { filledLines, linesOf, type FilledLine, type Line } from "./filledLines";
import { lineByName } from "./lineByName";

/** What is in several recipes is bought for all of them: its formula reads more than those of the other lines. */
function withoutSums(line: FilledLine): FilledLine {
  const { sheet, pattern, strangers } = line;
  const most = referencesOf(pattern).length;
  const readsMore = ({ row, column }: Place) =>
    referencesOf(sheet.cellAt(row, column)?.formula ?? "").length > most;
  return { ...line, strangers: strangers.filter((place) => !readsMore(place)) };
}

const columnOf = ({ placeAt }: Line): number => placeAt(0).column;

/** The columns of a recipe whose formulas choose what they read by its name: prices of a list for several recipes. */
export function filledByName(workbook: Workbook, block: RecipeBlock): readonly FilledLine[] {
  if (block.layout !== "down") return [];
  const filled = new Set(filledLines(block).map(columnOf));
  const down = linesOf(block).filter(
    ({ length, placeAt }) => length > 1 && placeAt(1).column === placeAt(0).column,
  );
  return down.flatMap((line) => {
    const named = filled.has(columnOf(line)) ? null : lineByName(workbook, block.sheet, line);
    return named === null ? [] : withoutSums(named);
  });
}
