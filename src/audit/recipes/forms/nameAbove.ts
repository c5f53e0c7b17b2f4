import { isBlank, textAt } from "../cells";
import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";
import type { Place } from "../recipeBlock";

/** The nearest name in the rows above a place. */
export function nameAbove(context: FinderContext, { row, column }: Place): Place | null {
  for (let at = row - 1; at >= Math.max(0, row - 3); at -= 1) {
    if (isBlank(context.sheet, at, column)) continue;
    return chemicalName(textAt(context.sheet, at, column), context.check) === null
      ? null
      : { row: at, column };
  }
  return null;
}
