import { ZERO_CELSIUS_K } from "../foundation/constants";

const CRITICAL_K = 647.096;
const CRITICAL_KPA = 22064;

/**
 * Vapour pressure of pure liquid water, kPa.
 * @source wagnerPruss1993, equation 1
 * @param temperatureC 0.01 to 374 °C
 */
export function saturationPressureKPa(temperatureC: number): number {
  const temperatureK = temperatureC + ZERO_CELSIUS_K;
  const tau = 1 - temperatureK / CRITICAL_K;
  const sum =
    -7.85951783 * tau +
    1.84408259 * tau ** 1.5 -
    11.7866497 * tau ** 3 +
    22.6807411 * tau ** 3.5 -
    15.9618719 * tau ** 4 +
    1.80122502 * tau ** 7.5;
  return CRITICAL_KPA * Math.exp((CRITICAL_K / temperatureK) * sum);
}
