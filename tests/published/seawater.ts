/**
 * Freezing point of seawater at atmospheric pressure, °C, salinity 4 to 40 g/kg, ± 0.003 K.
 * @source Millero, F.J. (1978), UNESCO Tech. Pap. Mar. Sci. 28, 29; from memory
 */
export function seawaterFreezingPointC(salinityGPerKg: number): number {
  const s = salinityGPerKg;
  return -0.0575 * s + 1.710523e-3 * s ** 1.5 - 2.154996e-4 * s * s;
}

/**
 * Seawater of salinity 35 as neutral salts, mol per kg of seawater: sea salt by Millero et al. (2008),
 * bromide, borate and carbonate counted as chloride. From memory, charges balanced here.
 */
export const seawaterSalts: Readonly<Record<string, number>> = {
  "sodium chloride": 0.4692 - 2 * 0.02824,
  "sodium sulfate": 0.02824,
  "potassium chloride": 0.0102,
  "magnesium chloride": 0.0528,
  "calcium chloride": 0.0103,
};
