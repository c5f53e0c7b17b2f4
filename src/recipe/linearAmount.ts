import { iceLineThetaMolPerKg } from "../engine/iceLine";
import { waterHeldKgPerMol } from "../engine/waterHeld";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../foundation/constants";
import { isProblem } from "../foundation/problem";
import type { Exchange } from "./exchange";
import type { Mix } from "./mix";
import { sucroseEquivalentGrams } from "./sweetness";
import type { Wish } from "./wish";

/** Water held at one θ less the share of the water that is to be liquid there, kg: linear in the grams. */
function heldBeyondKg(mix: Mix, theta: number, at: number | "freezing", liquidShare: number) {
  if (!(theta > 0)) return NaN;
  const held = mix.doses.reduce(
    (sum, { moles, substance }) => sum + moles * waterHeldKgPerMol(substance.curve, theta, at),
    0,
  );
  return held - (liquidShare * mix.waterGrams) / 1000;
}

/** Something that is 0 when the wish is met and linear in the grams of every ingredient; NaN when there is none. */
function miss(mix: Mix, { quantity, value, temperatureC }: Wish): number {
  switch (quantity) {
    case "freezing point":
      return heldBeyondKg(mix, iceLineThetaMolPerKg(value), "freezing", 1);
    case "ice fraction":
      return heldBeyondKg(mix, iceLineThetaMolPerKg(temperatureC), "freezing", 1 - value);
    case "water activity":
      return heldBeyondKg(mix, -Math.log(value) / WATER_MOLAR_MASS_KG_PER_MOL, temperatureC, 1);
    case "sweetness": {
      const sweet = sucroseEquivalentGrams(mix);
      return isProblem(sweet) ? NaN : sweet - (value * mix.totalGrams) / 100;
    }
  }
}

/**
 * The amount by the linear structure: at a fixed temperature everything is linear in the grams, so two trial
 * amounts give the answer. Null when there is none within the range; to be tried on the mix by the caller,
 * since the end of freezing (Tm′) is not linear.
 */
export function linearAmount(
  { mostGrams, mixWith }: Exchange,
  mix: Mix,
  wish: Wish,
): number | null {
  const scale = Math.min(mostGrams, mix.totalGrams);
  const [low, high] = [0.3 * scale, 0.9 * scale];
  const lowMix = mixWith(low);
  const highMix = mixWith(high);
  if (isProblem(lowMix) || isProblem(highMix)) return null;
  const lowMiss = miss(lowMix, wish);
  const highMiss = miss(highMix, wish);
  const grams = low - (lowMiss * (high - low)) / (highMiss - lowMiss);
  return grams >= 0 && grams <= mostGrams ? grams : null;
}
