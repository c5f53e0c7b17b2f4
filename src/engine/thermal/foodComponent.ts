/** The kinds of matter of which a food's thermal properties are added up. */
export type FoodComponent =
  "water" | "ice" | "protein" | "fat" | "carbohydrate" | "fibre" | "ash" | "ethanol";

/** A property as A₀ + A₁·t + A₂·t², t in °C. */
type Quadratic = readonly [a0: number, a1: number, a2: number];

interface ThermalFigures {
  readonly conductivityWPerMK: Quadratic;
  readonly densityKgPerM3: Quadratic;
  readonly heatCapacityKJPerKgK: Quadratic;
}

/**
 * Thermal properties of the parts of foods, −40 to 150 °C. Water's heat capacity is that of liquid water from
 * 0 °C up; `SUPERCOOLED_KJ_PER_KG_K` below. Ethanol is not among theirs: handbook figures from memory.
 * @source choiOkos1986
 */
export const THERMAL_FIGURES: Readonly<Record<FoodComponent, ThermalFigures>> = {
  water: {
    conductivityWPerMK: [0.57109, 1.7625e-3, -6.7036e-6],
    densityKgPerM3: [997.18, 3.1439e-3, -3.7574e-3],
    heatCapacityKJPerKgK: [4.1762, -9.0864e-5, 5.4731e-6],
  },
  ice: {
    conductivityWPerMK: [2.2196, -6.2489e-3, 1.0154e-4],
    densityKgPerM3: [916.89, -0.13071, 0],
    heatCapacityKJPerKgK: [2.0623, 6.0769e-3, 0],
  },
  protein: {
    conductivityWPerMK: [0.17881, 1.1958e-3, -2.7178e-6],
    densityKgPerM3: [1329.9, -0.5184, 0],
    heatCapacityKJPerKgK: [2.0082, 1.2089e-3, -1.3129e-6],
  },
  fat: {
    conductivityWPerMK: [0.18071, -2.7604e-4, -1.7749e-7],
    densityKgPerM3: [925.59, -0.41757, 0],
    heatCapacityKJPerKgK: [1.9842, 1.4733e-3, -4.8008e-6],
  },
  carbohydrate: {
    conductivityWPerMK: [0.20141, 1.3874e-3, -4.3312e-6],
    densityKgPerM3: [1599.1, -0.31046, 0],
    heatCapacityKJPerKgK: [1.5488, 1.9625e-3, -5.9399e-6],
  },
  fibre: {
    conductivityWPerMK: [0.18331, 1.2497e-3, -3.1683e-6],
    densityKgPerM3: [1311.5, -0.36589, 0],
    heatCapacityKJPerKgK: [1.8459, 1.8306e-3, -4.6509e-6],
  },
  ash: {
    conductivityWPerMK: [0.32962, 1.4011e-3, -2.9069e-6],
    densityKgPerM3: [2423.8, -0.28063, 0],
    heatCapacityKJPerKgK: [1.0926, 1.8896e-3, -3.6817e-6],
  },
  ethanol: {
    conductivityWPerMK: [0.173, -2.5e-4, 0],
    densityKgPerM3: [806.3, -0.85, 0],
    heatCapacityKJPerKgK: [2.27, 7e-3, 0],
  },
};

/** Heat capacity of water that is liquid below 0 °C, −40 to 0 °C. @source choiOkos1986 (from memory) */
export const SUPERCOOLED_KJ_PER_KG_K: Quadratic = [4.0817, -5.3062e-3, 9.9516e-4];

/** A₀ + A₁·t + A₂·t². */
export const at = ([a0, a1, a2]: Quadratic, temperatureC: number): number =>
  a0 + temperatureC * (a1 + temperatureC * a2);

/** Its integral from 0 °C to t. */
export const integralTo = ([a0, a1, a2]: Quadratic, temperatureC: number): number =>
  temperatureC * (a0 + temperatureC * (a1 / 2 + (temperatureC * a2) / 3));
