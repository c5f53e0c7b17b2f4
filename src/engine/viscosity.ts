/** Viscosity at the glass transition, log10 of Pa·s, and the two constants of Williams, Landel and Ferry. */
const AT_GLASS = 12;
const [C1, C2_K] = [17.44, 51.6];

/**
 * Viscosity of an unfrozen phase, log10 of Pa·s, by its distance to the glass transition:
 * log10 η = 12 − 17.44·d/(51.6 + d), d = T − Tg. At the glass transition and below it is a glass: 12.
 * Good to a decade: for a word, not for a number.
 * @source wlf1955 (universal constants)
 */
export function viscosityDecade(temperatureC: number, glassTransitionC: number): number {
  const distanceK = temperatureC - glassTransitionC;
  return distanceK <= 0 ? AT_GLASS : AT_GLASS - (C1 * distanceK) / (C2_K + distanceK);
}
