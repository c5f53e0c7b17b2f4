import { at, THERMAL_FIGURES, type FoodComponent } from "./foodComponent";
import type { FoodShares } from "./heatContent";

/** How a piece of food conducts, and what its volume weighs. */
export interface Conduction {
  readonly conductivityWPerMK: number;
  readonly densityKgPerM3: number;
}

const COMPONENTS = Object.keys(THERMAL_FIGURES) as readonly FoodComponent[];

/**
 * Levy's form of the Maxwell–Eucken model for two phases, whichever of them is continuous.
 * @source levy1981, as in ASHRAE Handbook, Refrigeration, 2006, chapter 9
 */
function levyWPerMK(first: number, second: number, firstVolumeFraction: number): number {
  const ratio = first / second;
  if (Math.abs(ratio - 1) < 1e-9) return first;
  const sigma = (ratio - 1) ** 2 / ((ratio + 1) ** 2 + ratio / 2);
  const half = 2 / sigma - 1 + 2 * firstVolumeFraction;
  const weight = (half - Math.sqrt(half ** 2 - (8 * firstVolumeFraction) / sigma)) / 2;
  return (second * (2 + ratio + 2 * (ratio - 1) * weight)) / (2 + ratio - (ratio - 1) * weight);
}

/**
 * Conductivity and density of a food without air at a temperature: the unfrozen parts side by side by volume,
 * then ice and the unfrozen rest by Levy's model.
 * @source choiOkos1986; levy1981
 */
export function conductionOfFood(shares: FoodShares, temperatureC: number): Conduction {
  const volumeOf = (component: FoodComponent): number =>
    shares[component] / at(THERMAL_FIGURES[component].densityKgPerM3, temperatureC);
  const ice = volumeOf("ice");
  const unfrozen = COMPONENTS.filter((component) => component !== "ice");
  const rest = unfrozen.reduce((sum, component) => sum + volumeOf(component), 0);
  const conductivity = (component: FoodComponent): number =>
    at(THERMAL_FIGURES[component].conductivityWPerMK, temperatureC);
  if (rest === 0) return { conductivityWPerMK: conductivity("ice"), densityKgPerM3: 1 / ice };
  const beside = unfrozen.reduce(
    (sum, component) => sum + (volumeOf(component) / rest) * conductivity(component),
    0,
  );
  return {
    conductivityWPerMK: levyWPerMK(conductivity("ice"), beside, ice / (ice + rest)),
    densityKgPerM3: 1 / (ice + rest),
  };
}
