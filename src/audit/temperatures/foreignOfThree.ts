import { fahrenheitToC } from "../answers/resultLabel";
import type { Reading } from "./foreignReadings";

/** The two others are about as cold as each other, and the third as they are when it is read as °F, within so many K. */
const CLOSE_K = 2;
/** Freezers are about as cold as each other within so many K, in whatever order they stand. */
const FREEZERS_K = 5.5;
/** A freezer below 0 °C that is so much warmer than at other times is none that works, in K. */
const LEAST_LEAP_K = 13;
/** What is warmer is no freezer's reading. */
const WARMEST_C = -2;

/** The one of three readings that is as cold as the two others only when it is read as °F. */
export function foreignOfThree(
  readings: readonly Reading[],
  isOfFreezer: boolean,
): readonly Reading[] {
  const sorted = [...readings].sort((one, other) => one.value - other.value);
  const [coldest, next, warm, ...more] = sorted;
  if (coldest === undefined || next === undefined || warm === undefined || more.length > 0)
    return [];
  // What is warm at first and then cold is cooled.
  const isCooled = warm === readings[0] && !isOfFreezer;
  const mayBeRight = isOfFreezer ? warm.value - next.value < LEAST_LEAP_K : warm.value <= 0;
  if (isCooled || mayBeRight || next.value > WARMEST_C) return [];
  const celsius = fahrenheitToC(warm.value);
  const isAlike = next.value - coldest.value <= (isOfFreezer ? FREEZERS_K : CLOSE_K);
  const isAmong = celsius >= coldest.value - CLOSE_K && celsius <= next.value + CLOSE_K;
  return isAlike && isAmong ? [warm] : [];
}
