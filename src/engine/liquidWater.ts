import type { Solution } from "./dissolved";
import { iceLineThetaMolPerKg } from "./iceLine";
import { heldWaterKg } from "./solutionTheta";

/**
 * Water that is still liquid at a temperature, kg: what the solutes hold there, never more than there is.
 * At 0 °C and above all of it; with no solute and below 0 °C none.
 * @param temperatureC down to −60 °C
 */
export function liquidWaterKg(solution: Solution, temperatureC: number): number {
  if (temperatureC >= 0) return solution.waterKg;
  const theta = iceLineThetaMolPerKg(temperatureC);
  if (theta <= 0) return solution.waterKg; // a hair below 0 °C θ is only rounding
  const held = heldWaterKg(solution, theta, "freezing");
  return Math.min(held, solution.waterKg);
}
