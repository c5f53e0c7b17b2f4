import { contains } from "../../workbook/references";
import type { AuditContext } from "../context";
import type { Effect } from "../finding";
import { rangesReadHere } from "../formulas/rangesReadHere";
import { amountPlace, type RecipeBlock, type RecipeName } from "../recipes/recipeBlock";
import { readableMass } from "./readableMass";

const MOST_RECIPES = 200;

/** What a name costs its recipe when the formula that weighs it by its name is an error; null when none is. */
export function lostByName(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
): Effect | null {
  const recipe = block.recipes.slice(0, MOST_RECIPES).find((one) => {
    const place = amountPlace(block, one, name);
    const value = block.sheet.cellAt(place.row, place.column)?.value;
    return (
      typeof value === "object" &&
      value !== null &&
      rangesReadHere(block.sheet, place).some((range) => contains(range, name.row, name.column))
    );
  });
  return recipe === undefined ? null : readableMass(context, block, recipe);
}
