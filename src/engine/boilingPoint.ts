import { badInput, outsideValidity } from "../foundation/problem";
import { andThen, type Result } from "../foundation/result";
import type { Solution } from "./dissolved";
import { rootBetween } from "./rootBetween";
import { saturationPressureKPa } from "./saturationPressure";
import { waterActivity } from "./waterActivity";

const COLDEST_C = 25;
const HOTTEST_C = 200;

/**
 * Temperature at which the water of a mix boils, °C: a_w · p(water) = pressure. The water activity is that
 * of 25 °C; the curves' temperature terms run away when carried further. Not for volatile solutes (alcohol).
 * @param pressureKPa above 3.2 kPa
 */
export function boilingPointC(solution: Solution, pressureKPa: number): Result<number> {
  if (!(pressureKPa > 0)) {
    return badInput(`The pressure is ${pressureKPa} kPa; it must be above 0.`);
  }
  return andThen(waterActivity(solution, COLDEST_C), (activity) => {
    const missing = (temperatureC: number) =>
      activity * saturationPressureKPa(temperatureC) - pressureKPa;
    return (
      rootBetween(missing, COLDEST_C, HOTTEST_C) ??
      outsideValidity(
        `At ${pressureKPa} kPa the mix boils outside ${COLDEST_C} to ${HOTTEST_C} °C, the range that is answered.`,
      )
    );
  });
}
