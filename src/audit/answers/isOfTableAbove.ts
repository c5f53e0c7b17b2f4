import type { WorkbookSheet } from "../../workbook/model";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { labelledTemperatureC } from "./resultLabel";
import { wordsAbove } from "./wordsAbove";

/** A table's headings stand at most so far over its numbers. */
const REACH = 8;

/**
 * Whether typed numbers stand side by side over a list of one recipe, each under a heading of its own: they compare other
 * things, the pastes that may go into it.
 */
export function isOfTableAbove(
  { range, recipes }: RecipeBlock,
  sheet: WorkbookSheet,
  places: readonly Place[],
): boolean {
  const [first] = places;
  if (first === undefined || places.length < 2 || recipes.length > 1) return false;
  const isTyped = ({ row, column }: Place) =>
    row === first.row && row < range.top && sheet.cellAt(row, column)?.formula === undefined;
  if (!places.every(isTyped)) return false;
  const headings = places.map((place) => wordsAbove(sheet, place, REACH));
  const isOwn = (words: string) => words !== "" && labelledTemperatureC(words) === null;
  return headings.every(isOwn) && new Set(headings).size === headings.length;
}
