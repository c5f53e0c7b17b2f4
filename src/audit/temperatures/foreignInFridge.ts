import { fahrenheitToC } from "../answers/resultLabel";
import type { Reading } from "./foreignReadings";

/** Where it is cool: there nothing is ever as warm as the number of its °F. */
const COOL_PLACE =
  /kühl(?!truhe)|fridge|refrigerat|\b(cooler|chiller|larder|cellar|pantry|walk-in|under-?counter)\b|keller\b/i;
const LEAST_READINGS = 3;
/** From freezing to a warm fridge, in °C. */
const [COLDEST_C, WARMEST_C] = [-1, 12];
/** About as cool as at other times, in K. */
const CLOSE_K = 2;

/** The one reading of a fridge, between others, that is as cool as they are only when it is read as °F. */
export function foreignInFridge(heading: string, readings: readonly Reading[]): readonly Reading[] {
  if (!COOL_PLACE.test(heading) || readings.length < LEAST_READINGS) return [];
  const warm = readings.filter(({ value }) => value > WARMEST_C);
  const cool = readings.map(({ value }) => value).filter((value) => value <= WARMEST_C);
  const [one, ...more] = warm;
  // What is warm at first is put in to cool.
  const isBetween = one !== undefined && one !== readings[0] && one !== readings.at(-1);
  if (!isBetween || more.length > 0 || Math.min(...cool) < COLDEST_C) return [];
  const celsius = fahrenheitToC(one.value);
  const isAlike = celsius >= Math.min(...cool) - CLOSE_K && celsius <= Math.max(...cool) + CLOSE_K;
  return isAlike ? [one] : [];
}
