/**
 * Sodium chloride solutions by which osmometers are set: grams per kg of water, real osmolality, mosmol/kg,
 * and depression of the freezing point, K. None was used in a fit.
 * @source phEur20235, from memory; its ideal osmolalities (105.67 to 765.86) follow from the grams
 */
export const osmometerStandards: readonly {
  readonly gramsPerKgWater: number;
  readonly milliosmolPerKg: number;
  readonly depressionK: number;
}[] = [
  { gramsPerKgWater: 3.087, milliosmolPerKg: 100, depressionK: 0.186 },
  { gramsPerKgWater: 6.26, milliosmolPerKg: 200, depressionK: 0.372 },
  { gramsPerKgWater: 9.463, milliosmolPerKg: 300, depressionK: 0.558 },
  { gramsPerKgWater: 12.684, milliosmolPerKg: 400, depressionK: 0.744 },
  { gramsPerKgWater: 15.916, milliosmolPerKg: 500, depressionK: 0.93 },
  { gramsPerKgWater: 19.147, milliosmolPerKg: 600, depressionK: 1.116 },
  { gramsPerKgWater: 22.38, milliosmolPerKg: 700, depressionK: 1.302 },
];
