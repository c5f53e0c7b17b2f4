/**
 * Ice line of sodium chloride by microscopy of frozen inclusions, to −20.8 °C: mass per cent by depression, K.
 * @source bodnar1993 (after Hall, Sterner & Bodnar 1988), coefficients from memory
 */
export function naclMassPercent(depressionK: number): number {
  return 1.78 * depressionK - 0.0442 * depressionK ** 2 + 0.000557 * depressionK ** 3;
}
