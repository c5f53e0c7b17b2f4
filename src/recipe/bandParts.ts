import { curveUncertaintyFraction } from "../catalogue/curveUncertainty";
import { iceLineTemperatureC } from "../engine/iceLineTemperature";
import { waterHeldKgPerMol } from "../engine/waterHeld";
import type { Dose, Mix } from "./mix";
import { spreadVariance } from "./spreadVariance";
import type { Substance } from "./substance";

// What the uncertainty of a mix is put together from, each part in θ.

export type At = number | "freezing";

const HALF_STEP = 1e-4;

/** What the solutes of a mix hold at one θ, and how that changes with θ. */
export interface HeldThere {
  readonly heldKg: number;
  readonly slope: number; // kg per (mol/kg), negative
  /** Share of the slope that each dose makes up. */
  readonly shares: readonly number[];
}

export function heldThere(doses: readonly Dose[], theta: number, at: At): HeldThere {
  const held = ({ moles, substance }: Dose, where: number) =>
    moles * waterHeldKgPerMol(substance.curve, where, at);
  const step = HALF_STEP * theta;
  const slopes = doses.map(
    (dose) => (held(dose, theta + step) - held(dose, theta - step)) / (2 * step),
  );
  const slope = slopes.reduce((sum, one) => sum + one, 0);
  const heldKg = doses.reduce((sum, dose) => sum + held(dose, theta), 0);
  return { heldKg, slope, shares: slopes.map((one) => one / slope) };
}

const relativeUncertainty = ({ solute, relativeUncertainty }: Substance, temperatureC: number) =>
  solute === null
    ? relativeUncertainty
    : curveUncertaintyFraction(solute.curveRecord, temperatureC);

/** Of the curves themselves, in θ: each is uncertain by its share of the depression, independently. */
export function ofCurves(doses: readonly Dose[], { shares }: HeldThere, theta: number): number {
  const temperatureC = iceLineTemperatureC(theta);
  return (
    theta *
    Math.hypot(
      ...doses.map(
        ({ substance }, index) =>
          (shares[index] ?? 0) * relativeUncertainty(substance, temperatureC),
      ),
    )
  );
}

/** Of the ingredients' composition, in θ; `liquidShare` is the part of the water that stays liquid. */
export function ofSpread(
  mix: Mix,
  { slope }: HeldThere,
  theta: number,
  at: At,
  liquidShare: number,
) {
  const kgPerGram = (component: "water" | Substance): number =>
    component === "water"
      ? -liquidShare / 1000
      : waterHeldKgPerMol(component.curve, theta, at) / component.molarMassGPerMol;
  const deviations = mix.parts.map(
    ({ item, grams }) => (grams * Math.sqrt(spreadVariance(item, kgPerGram))) / slope,
  );
  return Math.hypot(...deviations);
}

export const depressionK = (theta: number): number => -iceLineTemperatureC(theta);

export const kelvinPerTheta = (theta: number): number =>
  (depressionK(theta * (1 + HALF_STEP)) - depressionK(theta * (1 - HALF_STEP))) /
  (2 * HALF_STEP * theta);
