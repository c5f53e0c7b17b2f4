import { catalogueName } from "../catalogueName";
import type { MeantMix } from "../mix";
import { plainWords } from "../recipes/headings/plainWords";

const PLAIN = /^(water|wasser|ice|eis|tap water|leitungswasser)$/;

/** The water that is poured in as such, g. */
export const plainWaterGrams = ({ items, grams, ownIngredients }: MeantMix): number =>
  items.reduce((sum, item, at) => {
    const isPlain = PLAIN.test(plainWords(catalogueName(item, ownIngredients) ?? ""));
    return isPlain ? sum + (grams[at] ?? 0) : sum;
  }, 0);
