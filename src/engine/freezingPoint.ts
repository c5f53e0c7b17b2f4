import { COLDEST_C } from "../foundation/constants";
import { badInput, outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Solution } from "./dissolved";
import { iceLineThetaMolPerKg } from "./iceLine";
import { iceLineTemperatureC } from "./iceLineTemperature";
import { solutionThetaMolPerKg } from "./solutionTheta";

const COLDEST_THETA = iceLineThetaMolPerKg(COLDEST_C);

/**
 * Temperature at which the first ice forms, °C, at most 0; 0 without solute. Ice that never comes because
 * the solution turns to glass first is not this function's business (see `iceShare`).
 */
export function freezingPointC(solution: Solution): Result<number> {
  if (!(solution.waterKg > 0)) {
    return badInput(`The water of the mix is ${solution.waterKg} kg; it must be above 0.`);
  }
  const theta = solutionThetaMolPerKg(solution, "freezing");
  if (theta > COLDEST_THETA) {
    return outsideValidity(
      `The freezing point would lie below ${COLDEST_C} °C, the coldest that is answered.`,
    );
  }
  return theta === 0 ? 0 : iceLineTemperatureC(theta);
}
