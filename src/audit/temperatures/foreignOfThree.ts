import { fahrenheitToC } from "../answers/resultLabel";
import type { Reading } from "./foreignReadings";

/** The two others are about as cold as each other, and the third as they are when it is read as °F, within so many K. */
const CLOSE_K = 2;
/** What is warmer is no freezer's reading. */
const WARMEST_C = -2;

/** The one of three readings that is as cold as the two others only when it is read as °F. */
export function foreignOfThree(readings: readonly Reading[]): readonly Reading[] {
  const sorted = [...readings].sort((one, other) => one.value - other.value);
  const [coldest, next, warm, ...more] = sorted;
  if (coldest === undefined || next === undefined || warm === undefined || more.length > 0)
    return [];
  // What is warm at first and then cold is cooled.
  if (warm === readings[0] || warm.value <= 0 || next.value > WARMEST_C) return [];
  const celsius = fahrenheitToC(warm.value);
  const isAlike = next.value - coldest.value <= CLOSE_K;
  const isAmong = celsius >= coldest.value - CLOSE_K && celsius <= next.value + CLOSE_K;
  return isAlike && isAmong ? [warm] : [];
}
