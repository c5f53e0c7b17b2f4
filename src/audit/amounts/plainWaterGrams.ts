import { findItem } from "../../catalogue/findItem";
import { catalogueName } from "../catalogueName";
import type { MeantMix } from "../mix";

/** Whatever it is called: it is poured in as water, or as ice. */
function isPlainWater(item: string, ownIngredients: MeantMix["ownIngredients"]): boolean {
  const match = findItem(catalogueName(item, ownIngredients) ?? "");
  return match.kind === "ingredient" && ["water", "ice"].includes(match.ingredient.name);
}

/** The water that is poured in as such, g. */
export const plainWaterGrams = ({ items, grams, ownIngredients }: MeantMix): number =>
  items.reduce(
    (sum, item, at) => sum + (isPlainWater(item, ownIngredients) ? (grams[at] ?? 0) : 0),
    0,
  );
