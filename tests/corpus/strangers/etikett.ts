import { labelWords, type MadeRecipe } from "../recipes";
import { ALCOHOL } from "../stock";

/** All that the eater has to know, for one cell; empty where there is nothing. */
export function toldOf(made: MadeRecipe): string {
  const allergens = labelWords(made, "allergen").join(", ");
  const all = [...(allergens === "" ? [] : [`${allergens}.`]), ...labelWords(made, "caution")];
  return all.join(" ");
}

export const hasAlcohol = (made: MadeRecipe): boolean =>
  made.lines.some(({ caution }) => caution === ALCOHOL.caution);
