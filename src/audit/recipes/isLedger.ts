import type { RecipeBlock } from "./recipeBlock";

const MOST_RECIPES = 50;

/** Whether a list has so many recipes that they are not judged one by one, nor is anything said of one alone. */
export const isLedger = ({ recipes }: RecipeBlock): boolean => recipes.length > MOST_RECIPES;
