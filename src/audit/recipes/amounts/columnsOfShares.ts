import type { RecipeBlock } from "../recipeBlock";

/** The columns of a list that say its amounts once more, as shares beside grams or the other way round. */
export function columnsOfShares({ layout, range, recipes, roles }: RecipeBlock): readonly number[] {
  if (layout !== "down") return [];
  const taken = new Set(recipes.map(({ line }) => line));
  return [...roles].flatMap(([column, role]) =>
    role === "amount" && column >= range.left && !taken.has(column) ? [column] : [],
  );
}
