import { iceLineThetaMolPerKg } from "../engine/iceLine";
import { waterHeldKgPerMol } from "../engine/waterHeld";
import { COLDEST_C } from "../foundation/constants";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { dissolvedGrams } from "./amounts";
import { depressionK, heldThere, kelvinPerTheta, ofCurves } from "./bandParts";
import { unfrozenSolidsOfMix } from "./freezing";
import type { Mix } from "./mix";
import { mixingGap } from "./mixingGap";
import { maxFreezeTemperatureC, solutionOf } from "./solution";
import { spreadVariance } from "./spreadVariance";
import { endOfFreezing } from "./uncertainty";

/** One standard deviation of the liquid water, g, from curves, mixing rule and the end of freezing. */
function liquidWaterGrams(mix: Mix, waterKg: number, temperatureC: number, theta: number): number {
  const there = heldThere(mix.doses, theta, "freezing");
  const inTheta = Math.hypot(
    ofCurves(mix.doses, there, theta),
    mixingGap(mix.doses, there.heldKg, "freezing", depressionK) / kelvinPerTheta(theta),
  );
  const missingKg = Math.max(there.heldKg - waterKg, 0); // so much water more, and there would be ice
  const reachingKg = Math.max(Math.abs(there.slope) * inTheta - missingKg, 0);
  const solution = solutionOf(mix);
  const end = isProblem(solution) ? 0 : endOfFreezing(mix, solution, temperatureC);
  return 1000 * Math.hypot(reachingKg, end * waterKg);
}

/**
 * One standard uncertainty of UNFROZENSOLIDS, D/(D + L) with D dissolved and L liquid water: where there is
 * ice, water more or less only makes more or less of it; what is dissolved brings its own liquid water along.
 */
export function unfrozenSolidsUncertainty(mix: Mix, temperatureC: number): Result<number> {
  const share = unfrozenSolidsOfMix(mix, temperatureC);
  if (isProblem(share)) return share;
  if (mix.doses.length === 0) return 0;
  const lowestC = Math.max(maxFreezeTemperatureC(mix) ?? COLDEST_C, COLDEST_C);
  const coldC = Math.max(temperatureC, lowestC);
  const theta = coldC < 0 ? iceLineThetaMolPerKg(coldC) : 0;
  const waterKg = mix.waterGrams / 1000;
  const hasIce = theta > 0 && heldThere(mix.doses, theta, "freezing").heldKg < waterKg;
  const dissolved = dissolvedGrams(mix);
  const liquid = dissolved / share - dissolved;
  const all = (dissolved + liquid) ** 2;
  const deviations = mix.parts.map(({ item, grams }) => {
    const variance = spreadVariance(item, (component) => {
      if (component === "water") return hasIce ? 0 : -dissolved / all;
      const held = hasIce
        ? (1000 * waterHeldKgPerMol(component.curve, theta, "freezing")) /
          component.molarMassGPerMol
        : 0;
      return (liquid - dissolved * held) / all;
    });
    return grams * Math.sqrt(variance);
  });
  const ofWater = theta > 0 ? liquidWaterGrams(mix, waterKg, temperatureC, theta) : 0;
  return Math.hypot((dissolved / all) * ofWater, ...deviations);
}
