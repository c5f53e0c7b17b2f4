import { WATER_MOLAR_MASS_KG_PER_MOL, ZERO_CELSIUS_K } from "../foundation/constants";

/**
 * ln(vapour pressure of ice / vapour pressure of supercooled water).
 * @source murphyKoop2005, equations 7 (ice) and 10 (liquid), 123 to 332 K
 */
function logPressureRatio(temperatureK: number): number {
  const logT = Math.log(temperatureK);
  const ice = 9.550426 - 5723.265 / temperatureK + 3.53068 * logT - 0.00728332 * temperatureK;
  const liquid =
    54.842763 -
    6763.22 / temperatureK -
    4.21 * logT +
    0.000367 * temperatureK +
    Math.tanh(0.0415 * (temperatureK - 218.8)) *
      (53.878 - 1331.22 / temperatureK - 9.44523 * logT + 0.014025 * temperatureK);
  return ice - liquid;
}

/** The two equations cross at 0.01 °C, the triple point; the shift moves that to 0 °C. */
const SHIFT = logPressureRatio(ZERO_CELSIUS_K);

/**
 * θ of a solution in equilibrium with ice: −ln(a_w)/M_w, mol per kg. 0 at 0 °C, about 0.537 per kelvin
 * below it, negative above it (where there is no ice).
 * @param temperatureC −100 to 40 °C
 * @source murphyKoop2005, equations 7 and 10
 */
export function iceLineThetaMolPerKg(temperatureC: number): number {
  return (SHIFT - logPressureRatio(temperatureC + ZERO_CELSIUS_K)) / WATER_MOLAR_MASS_KG_PER_MOL;
}
