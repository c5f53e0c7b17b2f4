import { WATER_MOLAR_MASS_KG_PER_MOL } from "../foundation/constants";
import { badInput, outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Solution } from "./dissolved";
import { MOST_THETA_MOL_PER_KG, solutionThetaMolPerKg } from "./solutionTheta";

const LOWEST = Math.exp(-MOST_THETA_MOL_PER_KG * WATER_MOLAR_MASS_KG_PER_MOL);

/** Water activity of the liquid mix, 0 to 1. Above 25 °C the value of 25 °C. */
export function waterActivity(solution: Solution, temperatureC = 25): Result<number> {
  if (!(solution.waterKg > 0)) {
    return badInput(`The water of the mix is ${solution.waterKg} kg; it must be above 0.`);
  }
  const theta = solutionThetaMolPerKg(solution, temperatureC);
  if (theta > MOST_THETA_MOL_PER_KG) {
    return outsideValidity(
      `The water activity would lie below ${LOWEST.toFixed(2)}, the lowest that is answered.`,
    );
  }
  return Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * theta);
}
