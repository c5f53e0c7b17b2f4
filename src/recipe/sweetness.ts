import { outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Mix } from "./mix";

/** A sweet substance without a figure may make up so much of what is dissolved; then nothing is said. */
const MOST_WITHOUT_FIGURE = 0.02;

/** Grams of sucrose that would taste as sweet as all that is dissolved; gram for gram, no synergy. */
export function sucroseEquivalentGrams({ doses }: Mix): Result<number> {
  let sweet = 0;
  let unknown = 0;
  let all = 0;
  const names: string[] = [];
  for (const { substance, grams } of doses) {
    all += grams;
    if (substance.sweetness === null) {
      unknown += grams;
      names.push(substance.name);
    } else sweet += grams * substance.sweetness;
  }
  return unknown > MOST_WITHOUT_FIGURE * all
    ? outsideValidity(
        `items: no sweetness is known for ${names.join(", ")}; it is asked of every sugar in the mix.`,
      )
    : sweet;
}

/** Grams of sucrose per 100 g of mix that would taste as sweet. */
export function sweetnessOfMix(mix: Mix): Result<number> {
  const grams = sucroseEquivalentGrams(mix);
  return typeof grams === "number" ? (100 * grams) / mix.totalGrams : grams;
}
