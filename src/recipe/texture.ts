import {
  ICE_DECADES,
  LEAST_ICE_FELT_FRACTION,
  textureWord,
  WITH_ICE,
  WITHOUT_ICE,
} from "../catalogue/textureScale";
import { viscosityDecade } from "../engine/viscosity";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { iceFractionOfMix } from "./freezing";
import { glassTransitionOfMix } from "./glass";
import type { Mix } from "./mix";

/** What is not frozen: its glass transition and log10 of its viscosity in Pa·s (± a decade). */
export interface UnfrozenPhase {
  readonly transitionC: number;
  readonly decade: number;
}

export interface Texture {
  readonly word: string;
  readonly iceOfMix: number;
  /** Null when nothing is dissolved: there is only ice, or only water. */
  readonly unfrozen: UnfrozenPhase | null;
  /** The measure of the scale with ice; null where the scale without ice was used. */
  readonly firmness: number | null;
}

/** A word for how a mix feels at a temperature: a scale of this project's own. */
export function textureOf(mix: Mix, temperatureC: number): Result<Texture> {
  const iceOfWater = iceFractionOfMix(mix, temperatureC, "water");
  if (isProblem(iceOfWater)) return iceOfWater;
  const iceOfMix = (iceOfWater * mix.waterGrams) / mix.totalGrams;
  const felt = iceOfMix >= LEAST_ICE_FELT_FRACTION;
  if (mix.doses.length === 0) {
    const word = felt ? textureWord(WITH_ICE, Infinity) : textureWord(WITHOUT_ICE, -Infinity);
    return { word, iceOfMix, unfrozen: null, firmness: null };
  }
  const transitionC = glassTransitionOfMix({
    ...mix,
    waterGrams: mix.waterGrams * (1 - iceOfWater),
  });
  if (isProblem(transitionC)) return transitionC;
  const unfrozen = { transitionC, decade: viscosityDecade(temperatureC, transitionC) };
  if (!felt) {
    return { word: textureWord(WITHOUT_ICE, unfrozen.decade), iceOfMix, unfrozen, firmness: null };
  }
  const firmness = unfrozen.decade + ICE_DECADES * iceOfMix;
  return { word: textureWord(WITH_ICE, firmness), iceOfMix, unfrozen, firmness };
}
