import { iceShare } from "../engine/iceShare";
import { conductionOfFood, type Conduction } from "../engine/thermal/conduction";
import { heatContentKJPerKg, type FoodShares } from "../engine/thermal/heatContent";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { dissolvedGrams, gramsOfSubstance } from "./amounts";
import type { Mix } from "./mix";
import { maxFreezeTemperatureC, solutionOf } from "./solution";

/** A mix as heat sees it, its ice by this project's own freezing curve. */
export interface ThermalMix {
  readonly heatContentJPerKg: (temperatureC: number) => number;
  readonly conductionAt: (temperatureC: number) => Conduction;
}

/** Mass fractions of a mix when this share of its water is ice. */
function sharesOf(mix: Mix, iceOfWater: number): FoodShares {
  const { totalGrams, waterGrams, pieceWaterGrams } = mix;
  const ethanol = gramsOfSubstance(mix, "ethanol") / totalGrams;
  return {
    water: (waterGrams * (1 - iceOfWater) + pieceWaterGrams) / totalGrams,
    ice: (waterGrams * iceOfWater) / totalGrams,
    protein: mix.proteinGrams / totalGrams,
    fat: mix.fatGrams / totalGrams,
    carbohydrate: dissolvedGrams(mix) / totalGrams - ethanol,
    fibre: (mix.inertGrams - pieceWaterGrams) / totalGrams,
    ash: mix.ashGrams / totalGrams,
    ethanol,
  };
}

/** Heat content and conduction of a mix over temperature. */
export function thermalOf(mix: Mix): Result<ThermalMix> {
  const solution = solutionOf(mix);
  if (isProblem(solution)) return solution;
  const lowestC = maxFreezeTemperatureC(mix);
  const sharesAt = (temperatureC: number) =>
    sharesOf(mix, iceShare(solution, lowestC, temperatureC));
  return {
    heatContentJPerKg: (temperatureC) =>
      1000 * heatContentKJPerKg(sharesAt(temperatureC), temperatureC),
    conductionAt: (temperatureC) => conductionOfFood(sharesAt(temperatureC), temperatureC),
  };
}
