import { retype, typedAt } from "../book";
import type { Prepare } from "../kit";
import { trueValue, type MarkedRecipe, type MarkedResult } from "../marks";
import { one, preparedIn, resultsWhere, retypeNumber, rightValue, type Variant } from "../mutation";
import type { Chance } from "../random";

export type Pair = { readonly recipe: MarkedRecipe; readonly result: MarkedResult };

/** Retypes one result with a wrong number, the number of decimals as it was. */
export const mistyped = (
  states: readonly MarkedResult["states"][],
  wrong: (pair: Pair, right: number, random: Chance) => number | null,
  prepare?: Prepare,
): Variant => ({
  ...(prepare !== undefined && { prepare }),
  apply: (marked, random) => {
    const able = resultsWhere(
      marked,
      (result, recipe) =>
        states.includes(result.states) && (prepare === undefined || recipe === preparedIn(marked)),
    );
    const pair = one(random, able);
    const right = pair === null ? null : rightValue(pair.recipe, pair.result);
    const value = right === null ? null : wrong(pair!, right, random);
    if (value === null) return null;
    const { spot, decimals } = pair!.result;
    retypeNumber(marked, spot, value, decimals);
    return [spot];
  },
});

/** Changes a formula's text. */
export const rewritten = (
  states: readonly MarkedResult["states"][],
  change: (formula: string) => string,
): Variant => ({
  apply: (marked, random) => {
    const pair = one(
      random,
      resultsWhere(marked, ({ states: each, typed }) => states.includes(each) && !typed),
    );
    if (pair === null) return null;
    const { spot } = pair.result;
    retype(marked.book, spot, change(typedAt(marked.book, spot)!.content as string));
    return [spot];
  },
});

export const sign = (random: Chance): number => (random.next() < 0.5 ? -1 : 1);

/** Another value of the same recipe, when it is far enough from the right one. */
export const insteadOf =
  (other: MarkedResult["states"], least: number) =>
  ({ recipe, result }: Pair, right: number): number | null => {
    const value = trueValue(recipe.made, other, result.temperatureC);
    if (value === null) return null;
    // Grams to a hundred of water are typed where a per cent stands; in a cell with a % format as a fraction.
    const scale = /per 100 g/.test(other)
      ? result.scale / 100
      : result.scale === 1 && /per 100 g/.test(result.states)
        ? 100
        : result.scale;
    return Math.abs(value * scale - right) < least * scale ? null : value * scale;
  };
