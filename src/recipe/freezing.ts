import { freezingPointC } from "../engine/freezingPoint";
import { iceLineTemperatureC } from "../engine/iceLineTemperature";
import { iceShare } from "../engine/iceShare";
import { solutionThetaMolPerKg } from "../engine/solutionTheta";
import { isProblem, outsideValidity } from "../foundation/problem";
import { COLDEST_C } from "../foundation/constants";
import type { Result } from "../foundation/result";
import { dissolvedGrams } from "./amounts";
import type { Mix } from "./mix";
import { ofArgument } from "./ofArgument";
import { neverFreezes } from "./neverFreezes";
import { shownTemperature } from "./shownTemperature";
import { maxFreezeTemperatureC, solutionOf } from "./solution";

export type IceBasis = "water" | "mix";

/** Temperature at which the first ice forms, °C, at most 0; the reason when none can form. */
export function freezingPointOfMix(mix: Mix): Result<number> {
  const solution = solutionOf(mix);
  if (isProblem(solution)) return solution;
  const lowestC = maxFreezeTemperatureC(mix);
  const pointC = freezingPointC(solution);
  if (isProblem(pointC)) {
    return lowestC === null || lowestC < COLDEST_C
      ? ofArgument("grams", pointC)
      : neverFreezes(mix, null, lowestC);
  }
  return lowestC !== null && pointC < lowestC ? neverFreezes(mix, pointC, lowestC) : pointC;
}

/** Share of the water, or of the whole mass, that is ice at a temperature; 0 when none can form. */
export function iceFractionOfMix(mix: Mix, temperatureC: number, basis: IceBasis): Result<number> {
  const solution = solutionOf(mix);
  if (isProblem(solution)) return solution;
  const ofWater = iceShare(solution, maxFreezeTemperatureC(mix), temperatureC);
  return basis === "water" ? ofWater : (ofWater * mix.waterGrams) / mix.totalGrams;
}

/** Mass of what is dissolved over that and the liquid water, in the unfrozen phase. */
export function unfrozenSolidsOfMix(mix: Mix, temperatureC: number): Result<number> {
  const ice = iceFractionOfMix(mix, temperatureC, "water");
  if (isProblem(ice)) return ice;
  const dissolved = dissolvedGrams(mix);
  const liquid = mix.waterGrams * (1 - ice);
  if (dissolved + liquid > 0) return dissolved / (dissolved + liquid);
  return outsideValidity(
    `grams: at a temperature of ${temperatureC} °C all the water is ice and nothing is dissolved, so there is no unfrozen phase; something dissolved, or a temperature above 0 °C, is expected.`,
  );
}

/** Temperature at which so much is ice, °C; the reachable share when it is out of reach. */
export function iceTemperatureOfMix(
  mix: Mix,
  iceFraction: number,
  basis: IceBasis,
): Result<number> {
  const pointC = freezingPointOfMix(mix);
  const solution = solutionOf(mix);
  if (isProblem(pointC)) return pointC;
  if (isProblem(solution)) return solution;
  const waterShare = mix.waterGrams / mix.totalGrams;
  const ofWater = basis === "water" ? iceFraction : iceFraction / waterShare;
  if (ofWater === 0) return pointC;
  if (mix.doses.length === 0 && ofWater <= 1) return 0;
  const lowestC = Math.max(maxFreezeTemperatureC(mix) ?? COLDEST_C, COLDEST_C);
  const reachable = iceFractionOfMix(mix, lowestC, basis);
  if (isProblem(reachable)) return reachable;
  if (iceFraction > reachable) {
    return outsideValidity(
      `iceFraction: ${iceFraction} of the ${basis} cannot freeze; at most ${reachable.toFixed(3)} is ice, at ${shownTemperature(lowestC)} °C.`,
    );
  }
  const left = { ...solution, waterKg: solution.waterKg * (1 - ofWater) };
  return Math.max(iceLineTemperatureC(solutionThetaMolPerKg(left, "freezing")), lowestC);
}
