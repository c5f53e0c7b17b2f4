import { fahrenheitToC } from "../answers/resultLabel";
import type { Place } from "../recipes/recipeBlock";
import { foreignOfThree } from "./foreignOfThree";

/** One temperature of a log. */
export interface Reading extends Place {
  readonly value: number;
}

/** A log has at least so many readings. */
const LEAST_READINGS = 4;
/** A freezer keeps its temperature within so many kelvins most of the time. */
const LARGEST_SPREAD_K = 11;
/** More foreign readings than this share are another freezer's, or another time's. */
const MOST_FOREIGN = 0.15;
/** At least this share is about as cold as the others: of four readings three. */
const LEAST_USUAL = 0.75;
/** Fewer say less about how cold it may be: what is read as °F may lie farther outside them, in K. */
const MANY_READINGS = 10;
/** A reading is foreign when it lies so far outside all others. */
const OUTSIDE_K = 3;
/** In what cools down a reading is foreign when it leaps so far, and so many times as far as any other. */
const LEAST_LEAP_K = 15;
const LEAST_LEAP_STEPS = 4;
/** Read as °F it goes on from the one beside it as the others do, within so much. */
const ABOUT_K = 2;
/** What cools does so fastest at first: by so many times its later steps. */
const FIRST_STEPS = 3;
/** Readings that differ by less have no course. */
const LEAST_COURSE_K = 5;
/** Readings of a freezer that only fall by chance are fewer. */
const LEAST_COURSE = 5;
/** What is cooled is warmer at first than a freezer, whose readings rise and fall as they like. */
const COLDEST_START_C = -12;
/** What falls may rise by so much between two readings. */
const DRIFT_K = 1;
/** Near −40 both scales say about the same: a freezer drifts by as much. */
const LEAST_APART_K = 5;

/** The one or few readings below 0 °C that are at home among the others only when they are read as °F. */
function outsideOthers(readings: readonly Reading[]): readonly Reading[] {
  const sorted = readings.map(({ value }) => value).sort((one, other) => one - other);
  const median = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const usual = readings.filter(({ value }) => Math.abs(value - median) <= LARGEST_SPREAD_K / 2);
  if (median > -5 || usual.length < LEAST_USUAL * readings.length) return [];
  const margin = readings.length < MANY_READINGS ? 3 : 2;
  const isForeign = ({ value }: Reading) => {
    const others = usual.map((one) => one.value).filter((one) => one !== value);
    const [least, most] = [Math.min(...others), Math.max(...others)];
    const celsius = fahrenheitToC(value);
    const isOutside = value > most + OUTSIDE_K && value - celsius >= LEAST_APART_K;
    return isOutside && celsius >= least - margin && celsius <= most + margin;
  };
  const foreign = readings.filter(isForeign);
  return foreign.length <= Math.max(1, MOST_FOREIGN * readings.length) ? foreign : [];
}

const largestStep = (values: readonly number[]): number =>
  Math.max(...values.slice(1).map((value, at) => Math.abs(value - (values[at] ?? value))));

/** The one reading of a curve that leaps out of it, and goes on with it when it is read as °F. */
function leapsOut(readings: readonly Reading[]): readonly Reading[] {
  const warmest = Math.max(...readings.map(({ value }) => value));
  const at = readings.findIndex(({ value }) => value === warmest);
  const [one, others] = [readings[at], readings.filter((_, index) => index !== at)];
  if (one === undefined) return [];
  const step = largestStep(others.map(({ value }) => value));
  const beside = [readings[at - 1], readings[at + 1]].filter((each) => each !== undefined);
  const leap = Math.min(...beside.map(({ value }) => one.value - value));
  const celsius = fahrenheitToC(one.value);
  const goesOn = beside.some(({ value }) => Math.abs(celsius - value) <= step + ABOUT_K);
  const next = at === 0 ? readings[1]?.value : undefined;
  const begins = next !== undefined && celsius >= next && celsius - next <= FIRST_STEPS * step;
  return leap >= Math.max(LEAST_LEAP_K, LEAST_LEAP_STEPS * step) && (goesOn || begins) ? [one] : [];
}

/** Readings of one course stand one beside the other. */
const areTogether = (readings: readonly Reading[]): boolean =>
  readings.every(({ row, column }, at) => {
    const before = readings[at - 1];
    return before === undefined || row - before.row + column - before.column === 1;
  });

const isFalling = (values: readonly number[], drift = DRIFT_K): boolean =>
  values.every((value, at) => at === 0 || value <= (values[at - 1] ?? value) + drift);

/** Whether readings go down one after the other, at first not so much faster that the first is another thing. */
function isCooling(readings: readonly Reading[]): boolean {
  const [first = 0, ...others] = readings.map(({ value }) => value);
  const leap = first - (others[0] ?? first);
  // So many that never rise are no freezer's: whatever stood in it was warmer before.
  if (others.length >= LEAST_COURSE && isFalling([first, ...others], 0)) return true;
  return isFalling([first, ...others]) && leap < LEAST_LEAP_STEPS * largestStep(others);
}

/** The one reading that rises while all others fall, and is between its neighbours when it is read as °F. */
function againstCourse(readings: readonly Reading[]): readonly Reading[] {
  const values = readings.map(({ value }) => value);
  if (!areTogether(readings) || Math.max(...values) < COLDEST_START_C) return [];
  return readings.filter(({ value }, at) => {
    const [before, after] = [values[at - 1], values[at + 1]];
    const others = values.filter((_, index) => index !== at);
    const course = Math.max(...others) - Math.min(...others);
    if (before === undefined || course < LEAST_COURSE_K || !isFalling(others)) return false;
    const celsius = fahrenheitToC(value);
    const least = (after ?? before - largestStep(others)) - ABOUT_K;
    const isOut = value > before + OUTSIDE_K && value - celsius >= LEAST_APART_K && celsius < 0;
    const goesOn = (read: number) => read <= before + ABOUT_K && read >= least;
    // A number that goes on with the other sign has lost it.
    return isOut && goesOn(celsius) && !goesOn(-value);
  });
}

/** The readings in °F among those of a log; a curve is looked for only where its own heading says °C. */
export function foreignReadings(
  readings: readonly Reading[],
  mayBeCurve: boolean,
  isOfFreezer = false,
): readonly Reading[] {
  if (readings.length < LEAST_READINGS) return foreignOfThree(readings, isOfFreezer);
  const outside = isCooling(readings) ? [] : outsideOthers(readings);
  if (outside.length > 0 || !mayBeCurve) return outside;
  const rising = againstCourse(readings);
  return rising.length === 1 ? rising : leapsOut(readings);
}
