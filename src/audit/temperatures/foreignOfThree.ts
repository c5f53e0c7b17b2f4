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

/** What has begun to cool does not get so much warmer than it was at first, in K. */
const LEAST_RISE_K = 15;
/** It cools on by at most so many times what it did before. */
const MOST_STEPS = 3;

/** The last of three readings that leaps above all that were cooling, and goes on with them when it is read as °F. */
function endOfCourse([first, second, last]: readonly Reading[]): readonly Reading[] {
  if (first === undefined || second === undefined || last === undefined) return [];
  const step = first.value - second.value;
  const celsius = fahrenheitToC(last.value);
  const goesOn = celsius < second.value && second.value - celsius <= MOST_STEPS * step;
  return step > CLOSE_K && last.value - first.value >= LEAST_RISE_K && celsius < 0 && goesOn
    ? [last]
    : [];
}

/** The one of three readings that is as cold as the two others, or goes on as they do, only when it is read as °F. */
export function foreignOfThree(
  readings: readonly Reading[],
  isOfFreezer: boolean,
): readonly Reading[] {
  const sorted = [...readings].sort((one, other) => one.value - other.value);
  const [coldest, next, warm, ...more] = sorted;
  if (coldest === undefined || next === undefined || warm === undefined || more.length > 0)
    return [];
  // What is warm at first and then cold is cooled.
  const ends = isOfFreezer ? [] : endOfCourse(readings);
  if (ends.length > 0) return ends;
  const isCooled = warm === readings[0] && !isOfFreezer;
  const mayBeRight = isOfFreezer ? warm.value - next.value < LEAST_LEAP_K : warm.value <= 0;
  if (isCooled || mayBeRight || next.value > WARMEST_C) return [];
  const celsius = fahrenheitToC(warm.value);
  const isAlike = next.value - coldest.value <= (isOfFreezer ? FREEZERS_K : CLOSE_K);
  const isAmong = celsius >= coldest.value - CLOSE_K && celsius <= next.value + CLOSE_K;
  return isAlike && isAmong ? [warm] : [];
}
