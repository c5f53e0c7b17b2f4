import type { Allergen } from "../../src/catalogue/ingredient";
import { kitchenFactsOf } from "../../src/catalogue/kitchenFacts";
import type { PaneContext } from "../view";
import type { LarderEntry } from "./entries";

/** "Allergens: milk, soy", "none of the major allergens", or "unknown", never nothing. */
export function allergenSentence({ item }: LarderEntry, { words }: PaneContext): string {
  const { allergens, allergensByMaker = [] } = kitchenFactsOf(item);
  if (allergens === "unknown") return words.allergensUnknown;
  const named = (keys: readonly Allergen[]) =>
    keys.map((allergen) => words.allergenNames[allergen]).join(", ");
  const byMaker =
    allergensByMaker.length === 0 ? [] : [words.allergensByMaker(named(allergensByMaker))];
  const certain =
    allergens.length > 0
      ? [words.allergens(named(allergens))]
      : byMaker.length === 0
        ? [words.allergensNone]
        : [];
  return [...certain, ...byMaker].join(". ");
}
