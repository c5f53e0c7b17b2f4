/** Debye–Hückel slope of water at 25 °C, (kg/mol)^½. @source archerWang1990 */
const SLOPE_25C = 0.3915;

/** Pitzer's constants of the two salts that isopiestic work measures against, 25 °C. @source pitzerMayorga1973 */
const CONSTANTS = {
  "sodium chloride": { beta0: 0.0765, beta1: 0.2664, cPhi: 0.00127 },
  "potassium chloride": { beta0: 0.04835, beta1: 0.2122, cPhi: -0.00084 },
} as const;

/** Osmotic coefficient of a reference salt at 25 °C, to 6 mol/kg (KCl 4.8), good to 0.001. */
export function referenceOsmoticCoefficient(
  salt: keyof typeof CONSTANTS,
  molalityMolPerKg: number,
): number {
  const { beta0, beta1, cPhi } = CONSTANTS[salt];
  const root = Math.sqrt(molalityMolPerKg);
  return (
    1 -
    (SLOPE_25C * root) / (1 + 1.2 * root) +
    molalityMolPerKg * (beta0 + beta1 * Math.exp(-2 * root)) +
    molalityMolPerKg * molalityMolPerKg * cPhi
  );
}
