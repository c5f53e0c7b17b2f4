import { GAS_CONSTANT_J_PER_MOL_K, ZERO_CELSIUS_K } from "../foundation/constants";
import { outsideValidity } from "../foundation/problem";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Solution } from "./dissolved";
import { solutionThetaMolPerKg } from "./solutionTheta";
import { waterActivity } from "./waterActivity";
import { waterDensityKgPerL } from "./waterDensity";

/**
 * Osmotic pressure against pure water, MPa: R·T·θ·ρ(water), water taken as incompressible.
 * @param temperatureC 0 to 100 °C
 */
export function osmoticPressureMPa(solution: Solution, temperatureC = 25): Result<number> {
  if (!(temperatureC >= 0 && temperatureC <= 100)) {
    return outsideValidity(
      `Osmotic pressure is answered from 0 to 100 °C; the temperature is ${temperatureC} °C.`,
    );
  }
  const activity = waterActivity(solution, temperatureC);
  if (isProblem(activity)) return activity;
  const thetaMolPerL =
    solutionThetaMolPerKg(solution, temperatureC) * waterDensityKgPerL(temperatureC);
  // J per litre is kPa
  return (GAS_CONSTANT_J_PER_MOL_K * (temperatureC + ZERO_CELSIUS_K) * thetaMolPerL) / 1000;
}
