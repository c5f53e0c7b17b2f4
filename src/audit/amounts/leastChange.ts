import { column, componentGrams, iceFraction, numberFrom } from "../answers/answers";
import type { Mix } from "../mix";
import type { WantedIce } from "../temperatures/wantedIce";

/** The change of one ingredient's amount that brings a mix into its target's band. */
export interface Change {
  readonly item: string;
  readonly fromGrams: number;
  readonly toGrams: number;
}

/** Ingredients tried: no recipe of the trade has more that matter. */
const MOST_TRIED = 14;
/** A target of the whole mix is met in so many steps, since an amount changes the share of water. */
const STEPS = 8;
/** Near enough to a bound, as a fraction of the basis. */
const CLOSE = 5e-4;

function withAmount(mix: Mix, at: number, grams: number): Mix {
  return { ...mix, grams: mix.grams.map((old, index) => (index === at ? grams : old)) };
}

/** Grams of one ingredient with which a share of the water is ice; null when no amount does it. */
function amountFor(mix: Mix, item: string, share: number, temperatureC: number): number | null {
  return numberFrom(
    "AMOUNTFOR",
    column(mix.items),
    column(mix.grams),
    item,
    "ice fraction",
    share,
    temperatureC,
    mix.ownIngredients,
  );
}

/** The share of the water that is ice when this share of the mix is. */
function ofWater(mix: Mix, share: number, { basis }: WantedIce): number | null {
  if (basis === "water") return share;
  const water = componentGrams(mix, "water");
  const total = mix.grams.reduce((sum, grams) => sum + grams, 0);
  return water === null || water <= 0 ? null : Math.min(1, (share * total) / water);
}

/** The amount of the ingredient at a place of the mix that meets the bound; null when none is found. */
function amountMeeting(mix: Mix, at: number, bound: number, target: WantedIce): number | null {
  const item = mix.items[at] ?? "";
  let current = mix;
  for (let step = 0; step < STEPS; step += 1) {
    const share = ofWater(current, bound, target);
    const grams = share === null ? null : amountFor(mix, item, share, target.temperatureC);
    if (grams === null) return null;
    current = withAmount(mix, at, grams);
    const ice = iceFraction(current, target.temperatureC, target.basis);
    if (ice !== null && Math.abs(ice - bound) < CLOSE) return grams;
  }
  return null;
}

/**
 * The ingredient that moves a mix to the nearer bound of its target with the fewest grams, all others as they
 * are; null when none alone does it.
 */
export function leastChange(mix: Mix, target: WantedIce): Change | null {
  const ice = iceFraction(mix, target.temperatureC, target.basis);
  if (ice === null) return null;
  const bound = ice > target.iceTo ? target.iceTo : target.iceFrom;
  const changes = mix.items.slice(0, MOST_TRIED).flatMap((item, at): Change[] => {
    if (mix.items.indexOf(item) !== at || mix.items.lastIndexOf(item) !== at) return [];
    const toGrams = amountMeeting(mix, at, bound, target);
    return toGrams === null ? [] : [{ item, fromGrams: mix.grams[at] ?? 0, toGrams }];
  });
  const size = ({ fromGrams, toGrams }: Change) => Math.abs(toGrams - fromGrams);
  const [least] = changes.sort((one, other) => size(one) - size(other));
  return least ?? null;
}
