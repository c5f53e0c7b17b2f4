import type { Allergen } from "../../catalogue/ingredient";
import { textAt } from "../recipes/cells";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { allergensSetOff } from "./allergensSetOff";

/** Of a long list the first lines tell whether it is written as labels are. */
const MOST_LINES = 60;

/** Whether a column of a list sets all of some allergens off, in two lines at least: "whole MILK", "ALMOND paste". */
export function setsOffInLines(block: RecipeBlock, carried: ReadonlySet<Allergen>): boolean {
  const { sheet, names, layout, range } = block;
  if (layout === "across") return false;
  const rows = names.slice(0, MOST_LINES).map(({ row }) => row);
  const columns = Array.from({ length: range.right - range.left + 2 }, (_, at) => range.left + at);
  return columns.some((column) => {
    const inLines = rows.map((row) => allergensSetOff(textAt(sheet, row, column)));
    const setOff = inLines.filter(({ size }) => size > 0);
    return setOff.length > 1 && [...carried].every((one) => setOff.some((all) => all.has(one)));
  });
}
