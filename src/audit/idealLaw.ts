import { IDEAL_KF_K_KG_PER_MOL } from "../foundation/constants";
import type { Solute } from "../catalogue/solute";
import { solutes } from "../catalogue/solutes";
import { componentGrams, componentPer100 } from "./answers";
import type { Mix } from "./mix";
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

/** The substance without its crystal water; null when it has none. */
const anhydrousOf = ({ hydrateOf }: Solute): Solute | null =>
  solutes.find(({ name }) => name === hydrateOf?.solute) ?? null;

/** Moles of particles that one item adds by a reading; null when the ideal law cannot count it. */
function particlesOf(item: string, grams: number, reading: IdealReading, mix: Mix): number | null {
  const solute = pureSolute(item, mix.ownIngredients);
  if (solute === null) return particlesOfUndissolved(item, grams, reading, mix);
  const counted = (reading.hydratesAsAnhydrous ? anhydrousOf(solute) : null) ?? solute;
  const particles = reading.saltAsOneParticle ? 1 : solute.vantHoff.value;
  return (particles * grams) / counted.molarMass.value;
}

function particlesOfUndissolved(
  item: string,
  grams: number,
  reading: IdealReading,
  mix: Mix,
): number | null {
  const dissolved = componentPer100(item, "dissolved solids", mix.ownIngredients);
  const water = componentPer100(item, "water", mix.ownIngredients);
  if (dissolved === null || water === null || dissolved > 0.1) return null;
  const sugar = pureSolute("sucrose")?.molarMass.value ?? null;
  return reading.inclusionsAsSugar && water < 50 && sugar !== null ? grams / sugar : 0;
}

/**
 * Molality of particles as a classroom counts it, mol/kg of water (of mix, when misread so): Σ i·n / kg.
 * Null for a mix with an ingredient that is neither water, nor one solute, nor inert.
 */
export function idealMolality(mix: Mix, reading: IdealReading = CORRECT_READING): number | null {
  const waterGrams = componentGrams(mix, "water");
  if (waterGrams === null || waterGrams <= 0) return null;
  let particles = 0;
  for (const [at, item] of mix.items.entries()) {
    const more = particlesOf(item, mix.grams[at] ?? 0, reading, mix);
    if (more === null) return null;
    particles += more;
  }
  const total = mix.grams.reduce((sum, grams) => sum + grams, 0);
  return (particles / (reading.perKgOfMix ? total : waterGrams)) * 1000;
}

/** i·Kf·m, a positive number of K; null as above. */
export function idealDepressionK(mix: Mix, reading: IdealReading = CORRECT_READING): number | null {
  const molality = idealMolality(mix, reading);
  return molality === null ? null : reading.kf * molality;
}
