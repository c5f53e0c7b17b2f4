import type { SourceKey } from "../../foundation/bibliography";
import type { HowObtained } from "../../foundation/figure";

/**
 * What a gram of a dissolved substance adds to a solution at 20 °C, as polynomials in the mass fraction of all
 * that is dissolved.
 */
export interface SolutionFigures {
  readonly name: string;
  /** Apparent specific volume, mL/g. */
  readonly volumeMlPerG: readonly number[];
  /** Specific refraction (n² − 1)/(n² + 2)/ρ at the sodium D line, mL/g. */
  readonly refractionMlPerG: readonly number[];
  /** Beyond this mass fraction the values stay where they are there. */
  readonly upToMassFraction: number;
  readonly source: SourceKey;
  readonly obtained: HowObtained;
  /** One standard uncertainty of the volume and of the refraction, as a share of each. */
  readonly relativeUncertainty: { readonly volume: number; readonly refraction: number };
  readonly basis: string;
}
