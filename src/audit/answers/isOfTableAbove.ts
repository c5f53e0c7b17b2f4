import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { labelledTemperatureC } from "./resultLabel";

/** A table's headings stand at most so far over its numbers. */
const REACH = 8;

/** The nearest words over a number. */
function headingOver(sheet: WorkbookSheet, { row, column }: Place): string {
  for (let above = row - 1; above >= Math.max(0, row - REACH); above -= 1) {
    const words = textAt(sheet, above, column);
    if (words !== "") return words;
  }
  return "";
}

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
  const headings = places.map((place) => headingOver(sheet, place));
  const isOwn = (words: string) => words !== "" && labelledTemperatureC(words) === null;
  return headings.every(isOwn) && new Set(headings).size === headings.length;
}
