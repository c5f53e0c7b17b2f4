/**
 * Density of ethanol–water at 20 °C, g/mL: [mass %, density].
 * @source crc102, ethanol rows; the last is pure ethanol
 */
const DENSITY: readonly (readonly [massPercent: number, gramsPerMl: number])[] = [
  [0, 0.9982],
  [2, 0.9945],
  [4, 0.991],
  [6, 0.9878],
  [8, 0.9847],
  [10, 0.9819],
  [12, 0.9792],
  [14, 0.9765],
  [16, 0.9739],
  [18, 0.9713],
  [20, 0.9687],
  [24, 0.9632],
  [28, 0.9571],
  [32, 0.9504],
  [36, 0.9431],
  [40, 0.9352],
  [44, 0.9269],
  [48, 0.9183],
  [52, 0.9095],
  [56, 0.9004],
  [60, 0.8911],
  [64, 0.8818],
  [68, 0.8724],
  [72, 0.8629],
  [76, 0.8533],
  [80, 0.8436],
  [84, 0.8335],
  [88, 0.8232],
  [92, 0.8125],
  [96, 0.8013],
  [100, 0.7893],
];

/** Density of pure ethanol at 20 °C, g/mL. @source crc102 */
export const ETHANOL_G_PER_ML = 0.7893;

/**
 * Mass fraction of ethanol in a mixture with water alone of this strength: volume of pure ethanol in 100
 * volumes at 20 °C. Between the printed rows the strength is taken as linear in the mass, good to 0.0002.
 * @param abvPercent 0 to 100
 */
export function abvMassFraction(abvPercent: number): number {
  const strengthOf = ([massPercent, gramsPerMl]: readonly [number, number]) =>
    (massPercent * gramsPerMl) / ETHANOL_G_PER_ML;
  const above = DENSITY.findIndex((row) => strengthOf(row) >= abvPercent);
  const upper = DENSITY[above];
  const lower = DENSITY[above - 1];
  if (upper === undefined || lower === undefined) return abvPercent <= 0 ? 0 : 1;
  const share = (abvPercent - strengthOf(lower)) / (strengthOf(upper) - strengthOf(lower));
  return (lower[0] + share * (upper[0] - lower[0])) / 100;
}
