import { contains } from "../../workbook/references";
import type { CellRange } from "../../workbook/model";
import { rangesReadHere } from "../formulas/rangesReadHere";
import { amountPlace, type Place, type Recipe, type RecipeBlock } from "../recipes/recipeBlock";
import type { RecipeName } from "../recipes/recipeBlock";

const MOST_RECIPES = 200;

/** The cells that an amount reads, and those that a share between them in its own line reads: g, then %, then g. */
function readInLine({ sheet, layout }: RecipeBlock, place: Place): readonly CellRange[] {
  const direct = rangesReadHere(sheet, place);
  const between = direct.filter(({ top, bottom, left, right }) => {
    const isOne = top === bottom && left === right;
    return isOne && (layout === "down" ? top === place.row : left === place.column);
  });
  return [
    ...direct,
    ...between.flatMap(({ top, left }) => rangesReadHere(sheet, { row: top, column: left })),
  ];
}

/** Whether an amount is worked out from that of another recipe beside it, where it is told. */
export function isFromBeside(block: RecipeBlock, recipe: Recipe, name: RecipeName): boolean {
  const read = readInLine(block, amountPlace(block, recipe, name));
  if (read.length === 0) return false;
  return block.recipes
    .slice(0, MOST_RECIPES)
    .filter((other) => other !== recipe)
    .map((other) => amountPlace(block, other, name))
    .some((place) => read.some((range) => contains(range, place.row, place.column)));
}
