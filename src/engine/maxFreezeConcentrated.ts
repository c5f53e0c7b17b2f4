import { outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";

/** One dissolved substance, with its own Tm′ and C_g′ where they are known. */
export interface FreezeConcentratedPart {
  readonly grams: number;
  readonly temperatureC: number | null;
  readonly solidsFraction: number | null;
}

/** The maximally freeze-concentrated phase of a mix. */
export interface FreezeConcentrated {
  readonly temperatureC: number; // Tm′: below it no more ice forms
  readonly solidsFraction: number; // C_g′, mass fraction of what is dissolved
}

/** Above this share of dissolved matter without a figure nothing is said. */
const MOST_WITHOUT_FIGURE = 0.2;

/**
 * Tm′ and C_g′ of a mix: the means of its parts by mass. Alcohols and glycerol carry a very low Tm′ of their
 * own and pull the mean down. A little of a substance without a figure (salts, acids) is left out; when it
 * is more than a fifth of what is dissolved, as in a brine, there is no answer. Good to ± 5 °C for sugars.
 * @source roos1993 for the parts; the mean by mass is common practice
 */
export function maxFreezeConcentrated(
  parts: readonly FreezeConcentratedPart[],
): Result<FreezeConcentrated> {
  let total = 0;
  let known = 0;
  let temperatureSum = 0;
  let solidsSum = 0;
  for (const { grams, temperatureC, solidsFraction } of parts) {
    total += grams;
    if (temperatureC === null || solidsFraction === null) continue;
    known += grams;
    temperatureSum += grams * temperatureC;
    solidsSum += grams * solidsFraction;
  }
  if (!(total > 0)) return outsideValidity("Nothing is dissolved, so there is no Tm′.");
  if (known < (1 - MOST_WITHOUT_FIGURE) * total) {
    const percent = Math.round((100 * (total - known)) / total);
    return outsideValidity(
      `${percent} % of what is dissolved has no known Tm′; at most ${100 * MOST_WITHOUT_FIGURE} % may lack one.`,
    );
  }
  return { temperatureC: temperatureSum / known, solidsFraction: solidsSum / known };
}
