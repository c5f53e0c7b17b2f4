import { iceLineThetaMolPerKg } from "./iceLine";

const COLDEST_C = -100;
const STEP_K = 1e-3;
const LEAST_STEP_K = 1e-6;

/** Start of the search: T = −1.86 θ + 0.0172 θ² − 0.00012 θ³, within 0.6 K of the ice line to −70 °C. */
function firstGuessC(theta: number): number {
  return Math.max(-theta * (1.86 - theta * (0.0172 - 0.00012 * theta)), COLDEST_C);
}

/**
 * Temperature, °C, at which ice is in equilibrium with a solution of this θ: the inverse of
 * `iceLineThetaMolPerKg`, to 1e-11 of itself and, by rounding near 0 °C, 4e-12 K. Answers −100 for anything colder than −100 °C.
 */
export function iceLineTemperatureC(thetaMolPerKg: number): number {
  if (thetaMolPerKg <= 0) return 0;
  if (thetaMolPerKg >= iceLineThetaMolPerKg(COLDEST_C)) return COLDEST_C;
  let temperatureC = firstGuessC(thetaMolPerKg);
  let slope =
    (iceLineThetaMolPerKg(temperatureC + STEP_K) - iceLineThetaMolPerKg(temperatureC - STEP_K)) /
    (2 * STEP_K);
  let miss = iceLineThetaMolPerKg(temperatureC) - thetaMolPerKg;
  for (let iteration = 0; iteration < 20; iteration++) {
    const step = -miss / slope;
    temperatureC += step;
    if (Math.abs(step) <= 1e-13 * Math.abs(temperatureC)) break;
    const nextMiss = iceLineThetaMolPerKg(temperatureC) - thetaMolPerKg;
    if (nextMiss === miss || nextMiss === 0) break;
    // Between two places closer than that, rounding would make the slope.
    if (Math.abs(step) > LEAST_STEP_K) slope = (nextMiss - miss) / step;
    miss = nextMiss;
  }
  return temperatureC;
}
