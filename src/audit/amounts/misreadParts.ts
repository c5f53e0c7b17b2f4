import { findItem } from "../../catalogue/findItem";
import { componentGrams, componentPer100 } from "../answers/answers";
import { catalogueName } from "../catalogueName";
import { decimalsOf } from "../decimalsOf";
import type { MeantMix } from "../mix";
import { plainWaterGrams } from "./plainWaterGrams";
import { partIn, type StatedPart } from "../answers/statedParts";

const CLOSE = 0.01;

const near = (one: number, other: number): boolean => Math.abs(one / other - 1) < CLOSE;

/** Rounding does not change more than this: a plain 2 may be 2.0. */
const ROUNDED_BY = 0.05;

/** A typed number is rounded, so that it may be half of its last decimal off. */
function roundingOf({ sheet, row, column, factor }: StatedPart): number {
  const { value, formula } = sheet.cellAt(row, column) ?? {};
  const isTyped = formula === undefined && typeof value === "number";
  if (!isTyped) return 0;
  return factor * Math.min(0.5001 * 10 ** -decimalsOf(value), ROUNDED_BY * value);
}

/** Whether a stated part is another number, but for the rounding of a typed one. */
function isAbout(stated: StatedPart, other: number): boolean {
  const { value } = stated;
  return near(value, other) || Math.abs(value - other) <= roundingOf(stated);
}

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

/** Of more pieces than these not every choice is tried. */
const MOST_PIECES = 6;

/** The masses that any of the pieces in a mix have together, all of them first, g. */
function massesOfPieces({ items, grams, ownIngredients }: MeantMix): number[] {
  const pieces = items.flatMap((item, at) =>
    doesNotDissolve(item, ownIngredients) ? [grams[at] ?? 0] : [],
  );
  const some = pieces
    .slice(0, MOST_PIECES)
    .reduce<number[]>((sums, piece) => [...sums, ...sums.map((sum) => sum + piece)], [0]);
  const all = pieces.reduce((sum, piece) => sum + piece, 0);
  return [all, ...some].filter((sum) => sum > 0);
}

/** The mass of the pieces that a stated part counts as dissolved, g; null where none explains its number. */
export function countedPiecesGrams(stated: StatedPart): number | null {
  const { part, basis, right, mix } = stated;
  if (part !== "dissolved solids") return null;
  const whole = basis === "g" ? 100 : basisGrams(mix, basis);
  return massesOfPieces(mix).find((sum) => isAbout(stated, right + (100 * sum) / whole)) ?? null;
}

/** What a share is a share of, g. */
const basisGrams = (mix: MeantMix, basis: StatedPart["basis"]): number =>
  basis === "% of the mix"
    ? mix.grams.reduce((sum, one) => sum + one, 0)
    : (componentGrams(mix, "water") ?? 0);

const strengthOf = (item: string): number =>
  Number(/(\d+(?:[.,]\d+)?)\s*%/.exec(item)?.[1]?.replace(",", ".") ?? 0);

/** What the alcohol would be if strengths by volume were shares of the mass, g. */
export const ethanolByVolume = ({ items, grams, ownIngredients }: MeantMix): number =>
  items.reduce((sum, item, at) => {
    const isDrink = (componentPer100(item, "ethanol", ownIngredients) ?? 0) > 1;
    return isDrink ? sum + ((grams[at] ?? 0) * strengthOf(item)) / 100 : sum;
  }, 0);

/** What is given to 100 g of water as well as in 100 g of the mix. */
const TO_WATER = new Set<StatedPart["part"]>([
  ...(["sugars", "sucrose", "dissolved solids", "sodium chloride"] as const),
]);

export type Misreading = "plain water" | "inclusions" | "by volume" | "other basis";

/** The mistake that gives a stated part its number, each with a rule of its own; null when none does. */
export function misreadingOf(stated: StatedPart): Misreading | null {
  const { part, basis, right, mix } = stated;
  const isNear = (other: number) => isAbout(stated, other);
  if (isNear(right)) return null;
  const inBasis = (grams: number) =>
    basis === "g" ? grams : (100 * grams) / basisGrams(mix, basis);
  if (part === "water" && isNear(inBasis(plainWaterGrams(mix)))) return "plain water";
  if (countedPiecesGrams(stated) !== null) return "inclusions";
  if (part === "ethanol" && isNear(inBasis(ethanolByVolume(mix)))) return "by volume";
  const other = basis === "% of the mix" ? "g per 100 g of water" : "% of the mix";
  const otherwise = basis === "g" || !TO_WATER.has(part) ? null : partIn(mix, part, other);
  return otherwise !== null && isNear(otherwise) ? "other basis" : null;
}
