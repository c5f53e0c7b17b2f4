/**
 * Mean honey, g per 100 g at 17.2 % water: White et al., USDA Tech. Bull. 1261 (1962); the undetermined
 * 3.1 g are taken as higher saccharides, the acids as fruit acids. From memory, but for the moisture.
 */
export const meanHoney: Readonly<Record<string, number>> = {
  fructose: 38.19,
  glucose: 31.28,
  sucrose: 1.31,
  maltose: 7.31,
  higherSaccharides504: 4.6,
  "fruit acids": 0.57,
  "sodium chloride": 0.15,
};

/**
 * Water activity of honey at 25 °C by moisture, %, 15 to 21 %: the mean of two regressions over
 * hundreds of honeys, 0.267 + 0.0177·M (Chirife, Zamora & Motto, J. Food Eng. 72 (2006) 287) and
 * 0.262 + 0.0179·M (Perez et al., Food Bioprocess Technol. 2 (2009)); coefficients from memory.
 */
export function honeyWaterActivity(moisturePercent: number): number {
  return (0.267 + 0.0177 * moisturePercent + 0.262 + 0.0179 * moisturePercent) / 2;
}
