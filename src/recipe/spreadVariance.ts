import type { IngredientGroup } from "../catalogue/ingredient";
import type { Item } from "./item";
import type { Substance } from "./substance";

/**
 * What has no stated spread is taken as uncertain by this share of itself: it makes room for what has one, as
 * the dry part of a powder does for its moisture.
 */
const UNSTATED_FRACTION = 0.2;

const keyOf = (substance: Substance): string =>
  substance.solute === null ? "higherSaccharides" : substance.name;

/**
 * Where ripeness or a maker's recipe sets how sweet something is: its sugars rise and fall together, so that the
 * stated spread of each is that of their sum. In syrups and honey it is the split between the sugars that varies.
 */
const SWEETENED_AS_ONE: ReadonlySet<IngredientGroup> = new Set([
  ...([
    "fruit",
    "vegetables and herbs",
    "cocoa and chocolate",
    "nuts and seeds",
    "plant drinks",
  ] as const),
  ...(["biscuits", "confectionery", "alcohol", "finished"] as const),
]);

interface Deviation {
  readonly perGram: number; // one standard deviation, g per g of the item
  readonly effect: number; // of one gram more
}

/** Several that deviate in step, as one. */
function inStep(deviations: readonly Deviation[]): readonly Deviation[] {
  const perGram = deviations.reduce((sum, one) => sum + one.perGram, 0);
  if (perGram === 0) return [];
  const effect = deviations.reduce((sum, one) => sum + one.perGram * one.effect, 0) / perGram;
  return [{ perGram, effect }];
}

function deviationsOf(
  { content, spread, origin }: Item,
  effectOf: (component: "water" | Substance) => number,
): readonly Deviation[] {
  if (Object.keys(spread).length === 0) return []; // the user's own, or a pure substance: taken as exact
  const dissolved = new Map(content.substances.map(([one]) => [keyOf(one), one]));
  const { fat, protein, ash, inert } = content;
  const rest = ash + inert + (spread["fat"] ? 0 : fat) + (spread["protein"] ? 0 : protein);
  const asOne = origin.kind === "ingredient" && SWEETENED_AS_ONE.has(origin.ingredient.group);
  const sugars: Deviation[] = [];
  const others: Deviation[] = [{ perGram: UNSTATED_FRACTION * rest, effect: 0 }];
  for (const [substance, share] of content.substances) {
    if (spread[keyOf(substance)] === undefined)
      others.push({ perGram: UNSTATED_FRACTION * share, effect: effectOf(substance) });
  }
  for (const [key, perGram] of Object.entries(spread)) {
    const component = key === "water" ? key : dissolved.get(key);
    const isSugar = typeof component === "object" && component.kind === "sugar";
    const effect = component === undefined ? 0 : effectOf(component);
    (asOne && isSugar ? sugars : others).push({ perGram, effect });
  }
  return [...others, ...inStep(sugars)];
}

/**
 * Variance that an ingredient's natural and trade spread gives to something linear in its components, per gram
 * of it. The components deviate independently, as measured (but for sugars in step), and so that together they
 * still make 100 g:
 * Σ s²e² − (Σ s²e)² / Σ s².
 * @param effectOf what one gram more of a component does
 */
export function spreadVariance(
  item: Item,
  effectOf: (component: "water" | Substance) => number,
): number {
  let all = 0;
  let withEffect = 0;
  let withSquare = 0;
  for (const { perGram, effect } of deviationsOf(item, effectOf)) {
    const variance = perGram * perGram;
    all += variance;
    withEffect += variance * effect;
    withSquare += variance * effect * effect;
  }
  return all > 0 ? Math.max(withSquare - (withEffect * withEffect) / all, 0) : 0;
}
