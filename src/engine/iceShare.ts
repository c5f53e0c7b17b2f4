import type { Solution } from "./dissolved";
import { liquidWaterKg } from "./liquidWater";

/**
 * Share of the water that is ice, 0 to 1. Below Tm′, the temperature of maximal freeze-concentration, no
 * more ice forms: the share stays at its value there, and a mix whose ice line lies below Tm′ (honey) has none.
 * @param maxFreezeTemperatureC Tm′ of the mix, null when it has none
 */
export function iceShare(
  solution: Solution,
  maxFreezeTemperatureC: number | null,
  temperatureC: number,
): number {
  if (temperatureC >= 0 || !(solution.waterKg > 0)) return 0;
  const lowestC = Math.min(maxFreezeTemperatureC ?? temperatureC, 0);
  return 1 - liquidWaterKg(solution, Math.max(temperatureC, lowestC)) / solution.waterKg;
}
