/** A computed temperature as a sentence shows it: −1.5, with the true minus sign. */
export const shownTemperature = (temperatureC: number, decimals = 1): string =>
  temperatureC.toFixed(decimals).replace("-", "−");
