import { CORRECT_READING, idealMolality, type IdealReading } from "../solutions/idealLaw";
import type { Mix } from "../mix";
import { fahrenheitToC } from "./resultLabel";

/** How a stated number can be reached by the ideal law, and with which mistakes. */
export interface Explanation {
  readonly mistakes: readonly string[];
  readonly reading: IdealReading;
}

type Choice<T> = readonly (readonly [value: T, mistake: string | null])[];

const KF: Choice<number> = [
  [CORRECT_READING.kf, null],
  [18.6, "with Kf = 18.6"],
  [3.35, "with Kf = 3.35, the constant for °F"],
  [0.186, "with Kf = 0.186"],
];
const either = (mistake: string): Choice<boolean> => [
  [false, null],
  [true, mistake],
];
/** The one mistake that leaves out van 't Hoff factors. */
export const SALT_AS_ONE = "with salt counted as one particle";
const SALT = either(SALT_AS_ONE);
const HYDRATE = either("with the molar mass of the anhydrous sugar for its hydrate");
const BASIS = either("per kilogram of mix instead of water");
const INCLUSION = either("with the inclusions counted as sugar");
/** The one mistake that only turns the sign. */
export const SIGN_REVERSED = "with the sign reversed";
const SIGN: Choice<1 | -1> = [
  [1, null],
  [-1, SIGN_REVERSED],
];

/** Every combination of choices, those with the fewest mistakes first. */
function readings(role: "freezing point" | "depression" | "molality") {
  const list: { reading: IdealReading; sign: 1 | -1; mistakes: string[] }[] = [];
  for (const [kf, a] of role === "molality" ? KF.slice(0, 1) : KF)
    for (const [saltAsOneParticle, b] of SALT)
      for (const [hydratesAsAnhydrous, c] of HYDRATE)
        for (const [perKgOfMix, d] of BASIS)
          for (const [inclusionsAsSugar, e] of INCLUSION)
            for (const [sign, f] of role === "molality" ? SIGN.slice(0, 1) : SIGN) {
              const mistakes = [a, b, c, d, e, f].filter((mistake) => mistake !== null);
              list.push({
                reading: {
                  kf,
                  saltAsOneParticle,
                  hydratesAsAnhydrous,
                  perKgOfMix,
                  inclusionsAsSugar,
                },
                sign,
                mistakes,
              });
            }
  return list.sort((one, other) => one.mistakes.length - other.mistakes.length);
}

const READINGS = {
  "freezing point": readings("freezing point"),
  depression: readings("depression"),
  molality: readings("molality"),
} as const;

/** Hand-made numbers follow the law to the digits of their constants; one without a mistake may round more. */
const AGREES = 0.006;
const AGREES_WITHOUT_MISTAKE = 0.02;

/** How far off a stated number may be from that of a reading. */
const tolerated = (mistakes: readonly string[]): number =>
  mistakes.length === 0 ? AGREES_WITHOUT_MISTAKE : AGREES;

/**
 * The reading of the ideal law that gives a stated number, with the fewest mistakes and at most three, of several
 * the one that comes nearest; null when none does or the law does not apply.
 */
export function explainResult(
  mix: Mix,
  role: "freezing point" | "depression" | "molality",
  stated: number,
  isFahrenheit = false,
): Explanation | null {
  const value = isFahrenheit ? fahrenheitToC(stated) : stated;
  if (Math.abs(value) < 1e-6) return null;
  let best: (Explanation & { readonly off: number }) | null = null;
  for (const { reading, sign, mistakes } of READINGS[role]) {
    if (mistakes.length > Math.min(3, best?.mistakes.length ?? 3)) break;
    for (const onlyPoured of [false, true]) {
      const molality = idealMolality(mix, reading, onlyPoured);
      if (molality === null) return null;
      const size = role === "molality" ? molality : molality * reading.kf;
      const off = Math.abs(value / (sign * (role === "freezing point" ? -size : size)) - 1);
      if (off < Math.min(tolerated(mistakes), best?.off ?? 1)) best = { mistakes, reading, off };
    }
  }
  return best;
}
