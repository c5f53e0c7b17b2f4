import { curveUncertaintyFraction } from "../catalogue/curveUncertainty";
import { iceLineThetaMolPerKg } from "../engine/iceLine";
import { iceLineTemperatureC } from "../engine/iceLineTemperature";
import { solutionThetaMolPerKg } from "../engine/solutionTheta";
import { waterHeldKgPerMol } from "../engine/waterHeld";
import { COLDEST_C, WATER_MOLAR_MASS_KG_PER_MOL } from "../foundation/constants";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { waterActivityOfMix } from "./activity";
import { freezingPointOfMix } from "./freezing";
import type { Dose, Mix } from "./mix";
import { freezingPointGapK } from "./freezingPointGap";
import { mixingGap } from "./mixingGap";
import { maxFreezeTemperatureC, solutionOf } from "./solution";
import { spreadVariance } from "./spreadVariance";
import type { Substance } from "./substance";

type At = number | "freezing";

const HALF_STEP = 1e-4;

/** What the solutes of a mix hold at one θ, and how that changes with θ. */
interface HeldThere {
  readonly heldKg: number;
  readonly slope: number; // kg per (mol/kg), negative
  /** Share of the slope that each dose makes up. */
  readonly shares: readonly number[];
}

function heldThere(doses: readonly Dose[], theta: number, at: At): HeldThere {
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
function ofCurves(doses: readonly Dose[], { shares }: HeldThere, theta: number): number {
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
function ofSpread(mix: Mix, { slope }: HeldThere, theta: number, at: At, liquidShare: number) {
  const kgPerGram = (component: "water" | Substance): number =>
    component === "water"
      ? -liquidShare / 1000
      : waterHeldKgPerMol(component.curve, theta, at) / component.molarMassGPerMol;
  const deviations = mix.parts.map(
    ({ item, grams }) => (grams * Math.sqrt(spreadVariance(item, kgPerGram))) / slope,
  );
  return Math.hypot(...deviations);
}

const depressionK = (theta: number): number => -iceLineTemperatureC(theta);

const kelvinPerTheta = (theta: number): number =>
  (depressionK(theta * (1 + HALF_STEP)) - depressionK(theta * (1 - HALF_STEP))) /
  (2 * HALF_STEP * theta);

/** One standard uncertainty of the freezing point, K: curves, mixing rule and ingredients combined. */
export function freezingPointUncertaintyK(mix: Mix): Result<number> {
  const pointC = freezingPointOfMix(mix);
  if (isProblem(pointC)) return pointC;
  if (pointC === 0) return 0;
  const theta = iceLineThetaMolPerKg(pointC);
  const there = heldThere(mix.doses, theta, "freezing");
  const inTheta = Math.hypot(
    ofCurves(mix.doses, there, theta),
    ofSpread(mix, there, theta, "freezing", 1),
  );
  return Math.hypot(inTheta * kelvinPerTheta(theta), freezingPointGapK(mix));
}

/**
 * One standard uncertainty of the share of the water that is ice. Just above the freezing point it is how far
 * the band of the freezing point reaches into ice; 0 where no ice can be.
 */
export function iceFractionUncertainty(mix: Mix, temperatureC: number): Result<number> {
  const solution = solutionOf(mix);
  if (isProblem(solution)) return solution;
  if (temperatureC >= 0 || mix.doses.length === 0) return 0;
  const lowestC = Math.max(maxFreezeTemperatureC(mix) ?? COLDEST_C, COLDEST_C);
  const theta = iceLineThetaMolPerKg(Math.min(Math.max(temperatureC, lowestC), 0));
  if (theta <= 0) return 0;
  const there = heldThere(mix.doses, theta, "freezing");
  const liquidShare = there.heldKg / solution.waterKg;
  const inTheta = Math.hypot(
    ofCurves(mix.doses, there, theta),
    ofSpread(mix, there, theta, "freezing", liquidShare),
    mixingGap(mix.doses, there.heldKg, "freezing", depressionK) / kelvinPerTheta(theta),
  );
  const band = Math.abs(there.slope / solution.waterKg) * inTheta;
  return Math.min(Math.max(band - Math.max(liquidShare - 1, 0), 0), 1);
}

/** One standard uncertainty of the water activity. */
export function waterActivityUncertainty(mix: Mix, temperatureC: number): Result<number> {
  const activity = waterActivityOfMix(mix, temperatureC);
  const solution = solutionOf(mix);
  if (isProblem(activity)) return activity;
  if (isProblem(solution)) return solution;
  if (mix.doses.length === 0) return 0;
  const theta = solutionThetaMolPerKg(solution, temperatureC);
  const there = heldThere(mix.doses, theta, temperatureC);
  const inTheta = Math.hypot(
    ofCurves(mix.doses, there, theta),
    ofSpread(mix, there, theta, temperatureC, 1),
    mixingGap(mix.doses, solution.waterKg, temperatureC, (one) => one),
  );
  return activity * WATER_MOLAR_MASS_KG_PER_MOL * inTheta;
}
