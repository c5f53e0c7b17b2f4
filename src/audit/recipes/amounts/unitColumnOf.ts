import type { Recipe, RecipeBlock } from "../recipeBlock";

/** The column of units that a recipe's amounts go by: the one next to them where a list has one for each recipe. */
export function unitColumnOf(
  { layout, unitColumn, roles }: RecipeBlock,
  { line }: Recipe,
): number | null {
  if (layout !== "down" || unitColumn === null) return unitColumn;
  const units = [...roles].filter(([, role]) => role === "unit").map(([column]) => column);
  if (units.length < 2) return unitColumn;
  return units.find((column) => column === line + 1) ?? unitColumn;
}
