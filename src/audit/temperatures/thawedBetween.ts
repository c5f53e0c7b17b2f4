import { fahrenheitToC } from "../answers/resultLabel";
import type { Reading } from "./foreignReadings";

/** What is measured in the ice itself, which does not thaw and freeze again between two readings. */
const IN_THE_ICE = /\b(core|kern\w*|cent(re|er)|inside|innen|product|produkt\w*|mix|ice|eis)\b/i;
/** What has been frozen is so cold, in °C. */
const FROZEN_C = -10;
/** Read as °F it is about as cold as before and after, in K. */
const CLOSE_K = 3;

/** The readings of one ice that were above 0 °C between two frozen ones, and are as cold as those when they are read as °F. */
export function thawedBetween(heading: string, readings: readonly Reading[]): readonly Reading[] {
  if (!IN_THE_ICE.test(heading)) return [];
  return readings.filter(({ value }, at) => {
    const [before, after] = [readings[at - 1]?.value, readings[at + 1]?.value];
    if (value <= 0 || before === undefined || after === undefined) return false;
    const celsius = fahrenheitToC(value);
    const isFrozen = before <= FROZEN_C && after <= FROZEN_C;
    const isAmong =
      celsius >= Math.min(before, after) - CLOSE_K && celsius <= Math.max(before, after) + CLOSE_K;
    return isFrozen && isAmong;
  });
}
