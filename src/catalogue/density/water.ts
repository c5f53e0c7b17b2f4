/** Density of water at 20 °C, g/mL. @source kell1975, equation 16: 0.99820 */
export const WATER_GRAMS_PER_ML = 0.9982;

/** Specific refraction of water at 20 °C, mL/g: its index is 1.3330. @source crc102; computed here */
export const WATER_REFRACTION_ML_PER_G = (1.333 ** 2 - 1) / (1.333 ** 2 + 2) / WATER_GRAMS_PER_ML;
