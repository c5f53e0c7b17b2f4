import { IDEAL_KF_K_KG_PER_MOL } from "../../foundation/constants";
import { solutes } from "../../catalogue/solutes";
import type { Matrix } from "../../foundation/cell";
import { componentPer100 } from "../answers/answers";
import type { Mix } from "../mix";
import { pureSolute } from "./pureSolute";

/** Mistakes that a hand-made ideal-law sheet can hold, one choice each. */
export interface IdealReading {
  readonly saltAsOneParticle: boolean;
  readonly hydratesAsAnhydrous: boolean;
  readonly perKgOfMix: boolean;
  readonly inclusionsAsSugar: boolean;
  readonly kf: number;
}

export const CORRECT_READING: IdealReading = {
  saltAsOneParticle: false,
  hydratesAsAnhydrous: false,
  perKgOfMix: false,
  inclusionsAsSugar: false,
  kf: IDEAL_KF_K_KG_PER_MOL,
};

/** What the ideal law needs of one item, per gram. */
interface Counted {
  readonly waterGrams: number;
  readonly ions: number;
  readonly moles: number;
  /** Moles by the molar mass of the anhydrous substance, where the item is a hydrate. */
  readonly molesAsAnhydrous: number;
  /** Moles if taken for sugar, for what does not dissolve. */
  readonly molesAsSugar: number;
}

const NOTHING = { ions: 1, moles: 0, molesAsAnhydrous: 0, molesAsSugar: 0 };

/** Null when the law cannot count the item: a mixture of several solutes. */
function count(item: string, ownIngredients: Matrix | null): Counted | null {
  const water = componentPer100(item, "water", ownIngredients);
  const dissolved = componentPer100(item, "dissolved solids", ownIngredients);
  if (water === null || dissolved === null) return null;
  const waterGrams = water / 100;
  const solute = pureSolute(item, ownIngredients);
  if (solute !== null) {
    const anhydrous = solutes.find(({ name }) => name === solute.hydrateOf?.solute) ?? solute;
    return {
      ...NOTHING,
      waterGrams,
      ions: solute.vantHoff.value,
      moles: 1 / solute.molarMass.value,
      molesAsAnhydrous: 1 / anhydrous.molarMass.value,
    };
  }
  if (dissolved > 0.1) return null;
  const sugar = pureSolute("sucrose")?.molarMass.value;
  return {
    ...NOTHING,
    waterGrams,
    molesAsSugar: water < 50 && sugar !== undefined ? 1 / sugar : 0,
  };
}

const NO_OWN: Matrix = [[null]];
const counted = new WeakMap<Matrix, Map<string, Counted | null>>();

function countedOnce(item: string, ownIngredients: Matrix | null): Counted | null {
  const key = ownIngredients ?? NO_OWN;
  const known = counted.get(key) ?? new Map<string, Counted | null>();
  counted.set(key, known);
  const answer = known.get(item);
  if (answer !== undefined) return answer;
  const fresh = count(item, ownIngredients);
  known.set(item, fresh);
  return fresh;
}

function particlesPerGram(one: Counted, reading: IdealReading): number {
  const moles = reading.hydratesAsAnhydrous ? one.molesAsAnhydrous : one.moles;
  const sugar = reading.inclusionsAsSugar ? one.molesAsSugar : 0;
  return moles * (reading.saltAsOneParticle ? 1 : one.ions) + sugar;
}

/**
 * Molality of particles as a classroom counts it, mol/kg of water (of mix, when misread so): Σ i·n / kg.
 * Null for a mix with an ingredient that is neither water, nor one solute, nor inert.
 */
export function idealMolality(
  mix: Mix,
  reading: IdealReading = CORRECT_READING,
  onlyPoured = false,
): number | null {
  let [particles, waterGrams, totalGrams] = [0, 0, 0];
  for (const [at, item] of mix.items.entries()) {
    const one = countedOnce(item, mix.ownIngredients);
    const grams = mix.grams[at] ?? 0;
    if (one === null) return null;
    particles += grams * particlesPerGram(one, reading);
    // A classroom may count the water poured in and leave out what crystals bring.
    if (!onlyPoured || one.moles === 0) waterGrams += grams * one.waterGrams;
    totalGrams += grams;
  }
  if (waterGrams <= 0) return null;
  return (particles / (reading.perKgOfMix ? totalGrams : waterGrams)) * 1000;
}
