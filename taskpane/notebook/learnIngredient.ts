import type { Matrix } from "../../src/foundation/cell";
import { askMix, firstNumber } from "../bowl/askMix";
import type { RecipeInGrams } from "../bowl/toGrams";
import { mergeOwn } from "./mergeOwn";
import { scaledIngredient, type ScaledIngredient } from "./scaledIngredient";

interface MeasuredPoint extends RecipeInGrams {
  readonly own: Matrix | null;
  readonly measuredC: number;
  /** Of the thermometer, one standard uncertainty. */
  readonly thermometerK: number;
}

export interface LearntIngredient extends ScaledIngredient {
  readonly item: string;
  /** Of the factor, from the thermometer alone; null where a colder or warmer reading could not be explained. */
  readonly uncertainty: number | null;
}

/** What a measured freezing point of a mix says of one ingredient, all others being as the catalogue says. */
export function learnIngredient(
  { items, grams, own, measuredC, thermometerK }: MeasuredPoint,
  item: string,
  source: string,
): LearntIngredient | null {
  const explain = (measured: number) =>
    scaledIngredient({
      item,
      own,
      source,
      measured,
      answer: (rows) =>
        firstNumber(askMix({ items, grams, own: mergeOwn(own, rows) }, "FREEZINGPOINT")),
    });
  const found = explain(measuredC);
  if (found === null) return null;
  const [colder, warmer] = [explain(measuredC - thermometerK), explain(measuredC + thermometerK)];
  const uncertainty =
    colder === null || warmer === null ? null : Math.abs(colder.factor - warmer.factor) / 2;
  return { ...found, item, uncertainty };
}

/** A fruit or syrup whose Brix was read, as own ingredients that read the same. */
export const brixIngredient = (
  item: string,
  measuredBrix: number,
  source: string,
  own: Matrix | null,
): ScaledIngredient | null =>
  scaledIngredient({
    item,
    own,
    source,
    measured: measuredBrix,
    answer: (rows) =>
      firstNumber(askMix({ items: [[item]], grams: [[100]], own: mergeOwn(own, rows) }, "BRIX")),
  });
