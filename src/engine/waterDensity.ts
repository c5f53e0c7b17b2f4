/**
 * Density of air-free water at 101.325 kPa, kg per litre.
 * @source kell1975, equation 16
 * @param temperatureC 0 to 150 °C
 */
export function waterDensityKgPerL(temperatureC: number): number {
  const t = temperatureC;
  const numerator =
    999.83952 +
    t *
      (16.945176 +
        t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - 280.54253e-12 * t))));
  return numerator / (1 + 16.87985e-3 * t) / 1000;
}
