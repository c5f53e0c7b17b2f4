import { askMix, firstNumber, rowsOf, type RecipeMix } from "../bowl/askMix";

/** How much water one ingredient keeps liquid. */
export interface HeldShare {
  readonly name: string;
  readonly heldGrams: number;
}

export interface HeldWater {
  /** Largest first; ingredients that hold none are left out. */
  readonly shares: readonly HeldShare[];
  readonly waterGrams: number;
  readonly iceGrams: number;
}

/** So much water beside it that any ingredient freezes some: its share can then be read off. */
const PLENTY = 200;

/**
 * What keeps the water of a mix liquid at a temperature, ingredient by ingredient. Each holds what it would
 * hold alone in plenty of water, since the mixing rule adds these up. Null where a function declines.
 */
export function heldWater(mix: RecipeMix, temperatureC: number): HeldWater | null {
  const ice = firstNumber(askMix(mix, "ICEFRACTION", temperatureC, "water"));
  const water = firstNumber(askMix(mix, "COMPONENT", "water"));
  if (ice === null || water === null) return null;
  const shares: HeldShare[] = [];
  for (const { name, grams } of rowsOf(mix)) {
    const alone = {
      items: [["water"], [name]],
      grams: [[PLENTY * grams], [grams]],
      own: mix.own,
    };
    const aloneIce = firstNumber(askMix(alone, "ICEFRACTION", temperatureC, "water"));
    const aloneWater = firstNumber(askMix(alone, "COMPONENT", "water"));
    if (aloneIce === null || aloneWater === null) continue; // "water lost" and what is no ingredient
    const heldGrams = aloneWater * (1 - aloneIce);
    if (heldGrams > 1e-6 * water) shares.push({ name, heldGrams });
  }
  shares.sort((one, other) => other.heldGrams - one.heldGrams);
  return { shares, waterGrams: water, iceGrams: water * ice };
}
