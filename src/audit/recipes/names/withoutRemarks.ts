import { isBlank, looksNumeric, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import type { RecipeName } from "../recipeBlock";

/**
 * The names of a list without the labels right below it: names that nobody knows, with words in the place of
 * amounts ("Goes out as" with a target beside it).
 */
export function withoutRemarks(
  { sheet, check }: FinderContext,
  names: readonly RecipeName[],
  columns: readonly number[],
): readonly RecipeName[] {
  const isRemark = ({ item, row }: RecipeName): boolean => {
    const filled = columns.filter((column) => !isBlank(sheet, row, column));
    const saysWords = (column: number) =>
      textAt(sheet, row, column) !== "" && !looksNumeric(sheet, row, column);
    return check(item).kind === "unknown" && filled.every(saysWords);
  };
  const last = names.findLastIndex((name) => !isRemark(name));
  return names.slice(0, last + 1);
}
