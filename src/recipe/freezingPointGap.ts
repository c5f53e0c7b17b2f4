import { iceLineTemperatureC } from "../engine/iceLineTemperature";
import type { Mix } from "./mix";
import { mixingGap } from "./mixingGap";

/** How far the two rules for mixtures put the freezing point apart, K; 0 within one family of solutes. */
export function freezingPointGapK({ doses, waterGrams }: Mix): number {
  return mixingGap(doses, waterGrams / 1000, "freezing", (theta) => -iceLineTemperatureC(theta));
}
