import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { iceFractionOfMix } from "./freezing";
import { glassTransitionOfMix } from "./glass";
import type { Mix } from "./mix";

/**
 * With ice, by the share of the mix that is ice. The limits lie between textbook mixes at their serving
 * temperature (slush, granita, scoops, bars), common practice.
 */
const WITH_ICE: readonly (readonly [upTo: number, word: string])[] = [
  [0.15, "pours"],
  [0.4, "spoons"],
  [0.6, "scoops"],
  [0.82, "bites"],
  [1, "rock-hard"],
];

/** Without ice, by the decade of the viscosity, log10 of Pa·s: common practice. */
const WITHOUT_ICE: readonly (readonly [below: number, word: string])[] = [
  [1, "flows"],
  [3, "squeezes"],
  [6, "pulls"],
  [12, "cuts"],
  [Infinity, "snaps"],
];

/** Less ice than this does not make itself felt. */
const LEAST_ICE = 0.02;

export interface Texture {
  readonly word: string;
  readonly iceOfMix: number;
  /** Glass transition and log10 of the viscosity in Pa·s (± a decade); null where ice decides. */
  readonly glass: { readonly transitionC: number; readonly logViscosity: number } | null;
}

/**
 * Viscosity of what is not frozen by its distance to the glass: log10 η = 12 − 17.44·d/(51.6 + d), d = T − Tg;
 * below Tg it is a glass. Good to a decade.
 */
function logViscosityOf(temperatureC: number, transitionC: number): number {
  const distance = temperatureC - transitionC;
  return distance <= 0 ? 12 : 12 - (17.44 * distance) / (51.6 + distance);
}

const wordFor = (scale: readonly (readonly [number, string])[], value: number): string =>
  scale.find(([limit]) => value < limit)?.[1] ?? scale.at(-1)?.[1] ?? "";

/** A word for how a mix feels at a temperature. */
export function textureOf(mix: Mix, temperatureC: number): Result<Texture> {
  const iceOfMix = iceFractionOfMix(mix, temperatureC, "mix");
  if (isProblem(iceOfMix)) return iceOfMix;
  if (iceOfMix >= LEAST_ICE || mix.doses.length === 0) {
    return { word: wordFor(WITH_ICE, iceOfMix), iceOfMix, glass: null };
  }
  const transitionC = glassTransitionOfMix(mix);
  if (isProblem(transitionC)) return transitionC;
  const logViscosity = logViscosityOf(temperatureC, transitionC);
  return {
    word: wordFor(WITHOUT_ICE, logViscosity),
    iceOfMix,
    glass: { transitionC, logViscosity },
  };
}
