import type { Item } from "./item";
import type { Substance } from "./substance";

/** What does not dissolve and has no stated spread is taken as uncertain by this share of itself. */
const UNSTATED_FRACTION = 0.2;

const keyOf = (substance: Substance): string =>
  substance.solute === null ? "higherSaccharides" : substance.name;

interface Deviation {
  readonly perGram: number; // one standard deviation, g per g of the item
  readonly effect: number; // of one gram more
}

function deviationsOf(
  { content, spread }: Item,
  effectOf: (component: "water" | Substance) => number,
): Deviation[] {
  const dissolved = new Map(content.substances.map(([one]) => [keyOf(one), one]));
  const { fat, protein, ash, inert } = content;
  const rest = ash + inert + (spread["fat"] ? 0 : fat) + (spread["protein"] ? 0 : protein);
  const stated = Object.entries(spread).map(([key, perGram]): Deviation => {
    const component = key === "water" ? key : dissolved.get(key);
    return { perGram, effect: component === undefined ? 0 : effectOf(component) };
  });
  return [...stated, { perGram: UNSTATED_FRACTION * rest, effect: 0 }];
}

/**
 * Variance that an ingredient's natural and trade spread gives to something linear in its components, per gram
 * of it. The components deviate independently, as measured, but so that together they still make 100 g:
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
