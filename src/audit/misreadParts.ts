import { findItem } from "../catalogue/findItem";
import { componentGrams, componentPer100 } from "./answers";
import { catalogueName } from "./catalogueName";
import type { MeantMix } from "./mix";
import { plainWords } from "./recipes/plainWords";
import { partIn, type StatedPart } from "./statedParts";

const CLOSE = 0.01;

const near = (one: number, other: number): boolean => Math.abs(one / other - 1) < CLOSE;

type Own = MeantMix["ownIngredients"];

/** Pieces and fats: nuts, biscuit, chocolate pieces, oil. Gums dissolve, though without effect. */
export function doesNotDissolve(item: string, ownIngredients: Own): boolean {
  const name = catalogueName(item, ownIngredients);
  if (name === null) return false;
  const match = findItem(name);
  if (match.kind !== "ingredient") return false;
  const { inclusion, composition, group } = match.ingredient;
  return inclusion === true || group === "fats" || (composition.fat ?? 0) > 50;
}

const isPlainWater = (item: string, own: Own): boolean =>
  /^(water|wasser|ice|eis|tap water|leitungswasser)$/.test(
    plainWords(catalogueName(item, own) ?? ""),
  );

const gramsOf = ({ items, grams }: MeantMix, isMeant: (item: string) => boolean): number =>
  items.reduce((sum, item, at) => sum + (isMeant(item) ? (grams[at] ?? 0) : 0), 0);

/** The water that is poured in as such, g. */
export const plainWaterGrams = (mix: MeantMix): number =>
  gramsOf(mix, (item) => isPlainWater(item, mix.ownIngredients));

/** The mass of what stays whole, g. */
export const inclusionGrams = (mix: MeantMix): number =>
  gramsOf(mix, (item) => doesNotDissolve(item, mix.ownIngredients));

const strengthOf = (item: string): number =>
  Number(/(\d+(?:[.,]\d+)?)\s*%/.exec(item)?.[1]?.replace(",", ".") ?? 0);

/** What the alcohol would be if strengths by volume were shares of the mass, g. */
export const ethanolByVolume = ({ items, grams, ownIngredients }: MeantMix): number =>
  items.reduce((sum, item, at) => {
    const isDrink = (componentPer100(item, "ethanol", ownIngredients) ?? 0) > 1;
    return isDrink ? sum + ((grams[at] ?? 0) * strengthOf(item)) / 100 : sum;
  }, 0);

export type Misreading = "plain water" | "inclusions" | "by volume" | "other basis";

/** The mistake that gives a stated part its number, each with a rule of its own; null when none does. */
export function misreadingOf({ part, basis, value, right, mix }: StatedPart): Misreading | null {
  if (near(value, right)) return null;
  const total = mix.grams.reduce((sum, one) => sum + one, 0);
  const inBasis = (grams: number) => {
    const whole = basis === "% of the mix" ? total : (componentGrams(mix, "water") ?? 0);
    return basis === "g" ? grams : (100 * grams) / whole;
  };
  if (part === "water" && near(value, inBasis(plainWaterGrams(mix)))) return "plain water";
  const pieces = inclusionGrams(mix);
  if (part === "dissolved solids" && pieces > 0 && near(value, right + inBasis(pieces)))
    return "inclusions";
  if (part === "ethanol" && near(value, inBasis(ethanolByVolume(mix)))) return "by volume";
  const other = basis === "% of the mix" ? "g per 100 g of water" : "% of the mix";
  const otherwise = basis === "g" || part !== "sugars" ? null : partIn(mix, part, other);
  return otherwise !== null && near(value, otherwise) ? "other basis" : null;
}
