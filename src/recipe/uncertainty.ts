import { iceLineThetaMolPerKg } from "../engine/iceLine";
import { iceShare } from "../engine/iceShare";
import { solutionThetaMolPerKg } from "../engine/solutionTheta";
import type { Solution } from "../engine/dissolved";
import { COLDEST_C, WATER_MOLAR_MASS_KG_PER_MOL } from "../foundation/constants";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { waterActivityOfMix } from "./activity";
import { depressionK, heldThere, kelvinPerTheta, ofCurves, ofSpread } from "./bandParts";
import { freezingPointOfMix } from "./freezing";
import type { Mix } from "./mix";
import { freezingPointGapK } from "./freezingPointGap";
import { mixingGap } from "./mixingGap";
import { maxFreezeTemperatureC, solutionOf } from "./solution";

/** One standard uncertainty of Tm′, K: printed values of one sugar differ by as much. @source roos1993 */
const END_OF_FREEZING_K = 5;

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
  const reaching = Math.max(band - Math.max(liquidShare - 1, 0), 0);
  return Math.min(Math.hypot(reaching, endOfFreezing(mix, solution, temperatureC)), 1);
}

/** How far the share that is ice is in doubt because Tm′, where freezing ends, is. */
export function endOfFreezing(mix: Mix, solution: Solution, temperatureC: number): number {
  const endC = maxFreezeTemperatureC(mix);
  if (endC === null) return 0;
  const iceWith = (tmC: number) => iceShare(solution, Math.max(tmC, COLDEST_C), temperatureC);
  return (iceWith(endC - END_OF_FREEZING_K) - iceWith(endC + END_OF_FREEZING_K)) / 2;
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
