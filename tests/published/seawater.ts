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

/**
 * Freezing point of seawater and of the brine it leaves, °C, by absolute salinity, g of salt per kg, to 12 %:
 * evaluated with the GSW toolbox 3.6.16, air-free, at atmospheric pressure.
 * @source teos10
 */
export const seawaterBrine: readonly (readonly [salinityGPerKg: number, freezingPointC: number])[] =
  [
    [5, -0.2694],
    [10, -0.5361],
    [20, -1.0752],
    [30, -1.6275],
    [35, -1.9097],
    [40, -2.1964],
    [50, -2.7848],
    [60, -3.3958],
    [70, -4.0322],
    [80, -4.6968],
    [90, -5.3917],
    [100, -6.1182],
    [110, -6.877],
    [120, -7.668],
  ];

/** Absolute salinity, g/kg, of the seawater whose salts are listed above. @source millero2008 */
export const REFERENCE_SALINITY_G_PER_KG = 35.165;
